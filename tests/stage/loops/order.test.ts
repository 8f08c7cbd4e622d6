import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isFlaw, type LoopNode, traceLoop } from "../../../src/mechanics/loop-trace.ts";
import { listedOrder, shortestOrder } from "../../../src/stage/loops/order.ts";
import { layout, onlyLoop, solved } from "../../support/belt-plans.ts";

function* permutations<T>(list: readonly T[]): Generator<readonly T[]> {
  if (list.length < 2) yield list;
  for (const [index, first] of list.entries()) {
    for (const rest of permutations([...list.slice(0, index), ...list.slice(index + 1)])) yield [first, ...rest];
  }
}

/** The shortest sound loop of every order there is; Infinity when none is sound. */
function shortestOfAll([first, ...others]: readonly LoopNode[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (const rest of permutations(others)) {
    const loop = traceLoop([first as LoopNode, ...rest]);
    if (!isFlaw(loop)) best = Math.min(best, loop.length);
  }
  return best;
}

function lengthOf(nodes: readonly LoopNode[] | undefined): number {
  const loop = nodes === undefined ? undefined : traceLoop(nodes);
  return loop === undefined || isFlaw(loop) ? Number.POSITIVE_INFINITY : loop.length;
}

const tenths = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: min * 10, max: max * 10 })).map((count) => count / 10);
const node = fc.record({
  x: tenths(0, 200),
  y: tenths(0, 200),
  radius: tenths(4, 12),
  inside: fc.noBias(fc.integer({ min: 0, max: 9 })).map((die) => die < 6),
});
const nodes = fc
  .array(node, { minLength: 2, maxLength: 6 })
  .map((list) => list.map((one, index): LoopNode => ({ ...one, name: `n${index}` })));

/** Pulleys on a ring, and idlers that press in the spans between some of them. */
const ring = (pulleys: number, idlers: number): LoopNode[] => {
  const at = (turn: number, far: number) => ({
    x: far * Math.cos(2 * Math.PI * turn),
    y: far * Math.sin(2 * Math.PI * turn),
  });
  return [
    ...Array.from({ length: pulleys }, (_, index) => ({
      name: `p${index}`,
      ...at(index / pulleys + 0.003 * index, 300),
      radius: 12,
      inside: true,
    })),
    ...Array.from({ length: idlers }, (_, index) => ({
      name: `i${index}`,
      ...at((index + 0.5) / pulleys, 300 * Math.cos(Math.PI / pulleys) - 5 + 2 * index),
      radius: 9,
      inside: false,
    })),
  ];
};

describe("the order of a loop", () => {
  test("is the shortest of all orders, tried one by one", () => {
    let sound = 0;
    fc.assert(
      fc.property(nodes, (list) => {
        const best = shortestOfAll(list);
        if (Number.isFinite(best)) sound++;
        const found = lengthOf(shortestOrder(list).nodes);
        if (Number.isFinite(best)) expect(found).toBeCloseTo(best, 6);
        else expect(found).toBe(best);
      }),
      { numRuns: 500 },
    );
    expect(sound).toBeGreaterThan(30);
  });

  test.each([
    [6, 6],
    [8, 4],
    [11, 1],
    [12, 0],
  ])("of %i pulleys on a ring and %i idlers between them is the ring", (pulleys, idlers) => {
    const all = ring(pulleys, idlers);
    const shuffled = [...all].sort((a, b) => Math.sin(a.x * 7 + a.y) - Math.sin(b.x * 7 + b.y));
    const { nodes: order, whole } = shortestOrder(shuffled);
    expect(whole).toBe(true);
    const turns = order?.map(({ x, y }) => Math.atan2(y, x)) ?? [];
    const falls = turns.filter((turn, index) => turn > (turns[(index + 1) % turns.length] as number));
    expect(turns).toHaveLength(12);
    expect(falls).toHaveLength(1);
  });

  test("does not hang on the order in which the nodes are listed, nor on their names", () => {
    fc.assert(
      fc.property(nodes, fc.infiniteStream(fc.nat()), (list, keys) => {
        const mixed = list
          .map((one, index) => ({ one: { ...one, name: `other-${index}` }, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ one }) => one);
        const places = (found: readonly LoopNode[] | undefined) => found?.map(({ x, y }) => `${x} ${y}`);
        expect(places(shortestOrder(mixed).nodes)).toEqual(places(shortestOrder(list).nodes));
      }),
      { numRuns: 300 },
    );
  });

  test("as listed may go round either way, and comes out counter-clockwise", () => {
    const listed = ring(5, 2).sort((a, b) => Math.atan2(a.y, a.x) - Math.atan2(b.y, b.x));
    const names = (order: readonly LoopNode[] | undefined) => order?.map(({ name }) => name);
    expect(names(listedOrder(listed))).toEqual(names(listed));
    expect(names(listedOrder([...listed].reverse()))).toEqual(names(listed));
  });

  test("as listed is kept when a shorter one exists", () => {
    // An idler outside that may press either span of a pair of pulleys: nearer to the upper one.
    const spec = {
      motorTeeth: 40,
      screws: { A: [300, 0, 40] },
      idlers: { rub: { at: [150, 14], idler: "two F625", side: "outside" } },
    } as const;
    const found = onlyLoop(layout(spec)).loop;
    expect(found.nodes.map(({ name }) => name)).toEqual(["motor", "A", "rub"]);
    const { loops, diagnostics } = solved(layout({ ...spec, loop: { nodes: ["motor", "rub", "A"], inOrder: true } }));
    expect(loops.map(({ nodes: order }) => order.map(({ name }) => name))).toEqual([["motor", "A", "rub"]]);
    expect(diagnostics.map(({ name }) => name)).not.toContain("loop-tangled-or-not-touching");
  });

  test("that nobody finds in time asks for the list", () => {
    // Twelve nodes in a heap that no belt threads: places by a generator of pseudo-random numbers, seed 1.
    let seed = 1;
    const next = () => {
      seed = (seed * 1664525 + 1013904223) % 4294967296;
      return seed / 4294967296;
    };
    const heap = Array.from({ length: 12 }, (_, index) => ({
      name: `n${index}`,
      x: 500 * next(),
      y: 400 * next(),
      radius: 2,
      inside: index % 3 === 0,
    }));
    const { nodes: order, whole } = shortestOrder(heap);
    expect([order === undefined, whole]).toEqual([true, false]);
  });
});
