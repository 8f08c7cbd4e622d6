import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Diagnostic } from "../../../src/core/diagnostic.ts";
import { type Plan, planSchema } from "../../../src/stage/index.ts";
import { layout, solved, typedLayout } from "../../support/belt-plans.ts";
import { WIDE, widePlan } from "../../support/plans.ts";

const FOUR = {
  screws: { B: [250, 120, 40], C: [-150, 140, 40] },
  idlers: { rub: { at: [60, 30], idler: "two F625", side: "outside" } },
  loop: { slide: { direction: 270, from: -12, to: 12 } },
} as const;

type Place = readonly number[];

/** What is found of each loop, without names and without where things stand. */
function measured(plan: Plan) {
  const { loops, diagnostics } = solved(plan);
  return {
    loops: loops.map(({ nominal, bought, belt, nodes, slid }) => ({
      nominal: nominal.toFixed(6),
      bought,
      slid: slid?.at.toFixed(6),
      wraps: nodes.map(({ teeth = 0 }, index) => `${teeth} ${belt.wraps[index]?.toFixed(6)}`).sort(),
      spans: belt.spans.map(({ length }) => length.toFixed(6)).sort(),
    })),
    found: diagnostics.map(({ name, level }) => `${level} ${name}`).sort(),
  };
}

/** A layout with every place mapped, and every direction. */
function mapped(move: (place: Place) => Place, turn: (direction: number) => number): Plan {
  const plan = typedLayout(FOUR);
  const moved = <Thing extends { readonly at: unknown }>(thing: Thing) => ({ ...thing, at: move(thing.at as Place) });
  const all = (things: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(Object.entries(things).map(([name, thing]) => [name, moved(thing as { at: Place })]));
  const far = plan.bars as { far: { from: Place; to: Place } };
  const bar = { ...far.far, from: [...move(far.far.from), -15], to: [...move(far.far.to), -15] };
  const one = { ...plan.loops.one, slide: { ...FOUR.loop.slide, direction: turn(FOUR.loop.slide.direction) } };
  return planSchema.parse({
    ...plan,
    bars: { far: bar },
    motor: moved(plan.motor),
    screws: all(plan.screws),
    idlers: all(plan.idlers),
    loops: { one },
  });
}

describe("the same machine", () => {
  const still = measured(layout(FOUR));

  test("is one to compare: a loop is bought and the motor slides", () => {
    expect(still.loops[0]?.bought).toBeGreaterThan(900);
    expect(still.loops[0]?.slid).toBeDefined();
  });

  test.each([17, 90, 123.4, 180, 301])("turned by %s degrees", (angle) => {
    const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const turned = mapped(
      ([x = 0, y = 0]) => [x * cos - y * sin, x * sin + y * cos],
      (direction) => (direction + angle) % 360,
    );
    expect(measured(turned)).toEqual(still);
  });

  test("moved", () => {
    expect(
      measured(
        mapped(
          ([x = 0, y = 0]) => [x + 31.7, y - 212.9],
          (direction) => direction,
        ),
      ),
    ).toEqual(still);
  });

  test("seen in a mirror", () => {
    expect(
      measured(
        mapped(
          ([x = 0, y = 0]) => [-x, y],
          (direction) => 180 - direction,
        ),
      ),
    ).toEqual(still);
  });

  test("with its things listed in another order", () => {
    const backwards = <Thing>(things: Readonly<Record<string, Thing>>) =>
      Object.fromEntries(Object.entries(things).reverse()) as Record<string, Thing>;
    const { low, high } = WIDE.loops;
    const mixed = {
      ...WIDE,
      screws: backwards(WIDE.screws),
      bars: backwards(WIDE.bars),
      loops: { high: { ...high, nodes: ["C", "motor"] }, low: { ...low, nodes: ["B", "press", "A", "motor"] } },
    };
    const { loops } = solved(planSchema.parse(mixed));
    const straight = solved(widePlan()).loops;
    for (const name of ["low", "high"]) {
      const [one, other] = [loops, straight].map((list) => list.find(({ loop }) => loop === name));
      expect(one).toEqual({ ...other, gaps: one?.gaps, stock: one?.stock });
      expect(one?.gaps.map(({ gap }) => gap.toFixed(6)).sort()).toEqual(
        other?.gaps.map(({ gap }) => gap.toFixed(6)).sort(),
      );
    }
  });

  test("with other names", () => {
    const renamed = layout({
      ...FOUR,
      screws: { zulu: FOUR.screws.B, alfa: FOUR.screws.C },
      idlers: { aaa: FOUR.idlers.rub },
    });
    expect(measured(renamed)).toEqual(still);
  });
});

describe("a place that follows from the slide", () => {
  test("the loop that is bought lies round the nodes where they then stand", () => {
    const { loops } = solved(layout(FOUR));
    expect(loops[0]?.belt.length).toBeCloseTo(loops[0]?.bought ?? 0, 6);
    expect(loops[0]?.nodes.find(({ name }) => name === "motor")?.y).toBeCloseTo(-(loops[0]?.slid?.at ?? 0), 9);
  });
});

const tenths = (min: number, max: number) =>
  fc.noBias(fc.integer({ min: min * 10, max: max * 10 })).map((count) => count / 10);
const spot = fc.tuple(tenths(-110, 110), tenths(-110, 110));
const teeth = fc.constantFrom(16, 20, 36, 40, 60);
const screw = fc.tuple(tenths(-110, 110), tenths(-110, 110), teeth);
const idler = fc.record({
  at: spot,
  idler: fc.constantFrom("two F625", "two F608", "smooth, bore 5", "20 teeth, bore 5"),
  side: fc.constantFrom("inside", "outside"),
});
const slide = fc.record({
  node: fc.constantFrom("motor", "A", "i1", "nobody"),
  direction: fc.integer({ min: -360, max: 360 }),
  from: fc.integer({ min: -30, max: 5 }),
  to: fc.integer({ min: -5, max: 30 }),
});
/** So many loops in stock that a random machine finds one often enough. */
const STOCK = Array.from({ length: 300 }, (_, index) => 200 + 2 * index);
const random = fc.record({
  motor: spot,
  motorTeeth: teeth,
  screws: fc.oneof(
    fc.record({ A: screw }),
    fc.record({ A: screw, B: screw }),
    fc.record({ A: screw, B: screw, C: screw }),
  ),
  idlers: fc.oneof(fc.constant({}), fc.record({ i1: idler }), fc.record({ i1: idler, i2: idler })),
  loop: fc.record({ slide, inOrder: fc.boolean(), tension: fc.integer({ min: 1, max: 60 }) }, { requiredKeys: [] }),
});

function at(plan: unknown, path: Diagnostic["path"]): unknown {
  return path.reduce<unknown>((thing, key) => (thing as Record<string | number, unknown> | undefined)?.[key], plan);
}

describe("random machines", () => {
  test("never throw; each message has a place, a sentence and a way out; a sound one has a belt of a length in stock", () => {
    let sound = 0;
    fc.assert(
      fc.property(random, (spec) => {
        const plan = layout({ ...spec, loop: { ...spec.loop, stock: STOCK } });
        const { loops, diagnostics, sections } = solved(plan);
        for (const { path, says, set, why } of diagnostics) {
          expect(at(plan, path)).toBeDefined();
          for (const words of [says, set, why]) {
            expect(words.length).toBeGreaterThan(5);
            expect(words).not.toMatch(/NaN|undefined|Infinity/);
          }
        }
        for (const { value, label } of sections.flatMap(({ facts }) => facts)) {
          expect([label, Number.isFinite(value)]).toEqual([label, true]);
        }
        const [loop] = loops;
        if (diagnostics.some(({ level }) => level === "error")) return;
        sound++;
        expect(loop?.nodes).toHaveLength(plan.loops.one?.nodes.length ?? 0);
        expect(STOCK).toContain(loop?.bought);
        expect(Math.abs((loop?.belt.length ?? 0) - (loop?.bought ?? 0))).toBeLessThan(0.81);
      }),
      { numRuns: 300 },
    );
    expect(sound).toBeGreaterThan(0);
  });
});
