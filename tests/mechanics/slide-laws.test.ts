import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { thrown, withIdlers } from "../outside/layouts.ts";
import { dice } from "../outside/random.ts";
import { sound } from "./printed.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const layouts = fc
  .tuple(fc.integer(), fc.boolean())
  .map(([seed, idlers]) => (idlers ? withIdlers(dice(seed)) : thrown(dice(seed))));
const loops = layouts.filter((nodes) => !isRefusal(m.beltLoop(nodes)));
const lengthOf = (nodes: readonly m.LoopNode[]) => sound(m.beltLoop(nodes)).length;

/** The plan seen turned, moved, scaled and mirrored. */
function seen(nodes: readonly m.LoopNode[], turn: number, scale: number, mirrored: boolean): m.LoopNode[] {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const placed = nodes.map((node) => ({
    ...node,
    x: 31 + scale * (cos * node.x - sin * node.y) * (mirrored ? -1 : 1),
    y: scale * (sin * node.x + cos * node.y) - 12,
    radius: scale * node.radius,
  }));
  return mirrored ? placed.reverse() : placed;
}

describe("laws of any loop, idlers and refused ones too", () => {
  test("turned, moved, scaled, mirrored and started elsewhere it is as long to scale, or refused by the same name", () => {
    let refused = 0;
    fc.assert(
      fc.property(layouts, between(-360, 360), between(0.2, 5), fc.boolean(), fc.nat(8), (nodes, ...view) => {
        const [turn, scale, mirrored, start] = view;
        const placed = seen(nodes, turn, scale, mirrored);
        const first = start % placed.length;
        const before = m.beltLoop(nodes);
        const after = m.beltLoop([...placed.slice(first), ...placed.slice(0, first)]);
        if (isRefusal(before)) refused++;
        if (isRefusal(before) || isRefusal(after)) {
          expect(isRefusal(after)).toBe(isRefusal(before));
          if (isRefusal(before) && isRefusal(after) && !mirrored) expect(after.defect?.name).toBe(before.defect?.name);
        } else expect(after.length / (scale * before.length)).toBeCloseTo(1, 10);
      }),
      { seed: 31, numRuns: 400 },
    );
    expect(refused).toBeGreaterThan(50);
  });

  test("signed wraps are one turn, and every wrap lies between nothing and a turn", () => {
    fc.assert(
      fc.property(loops, (nodes) => {
        const { wraps } = sound(m.beltLoop(nodes));
        const turned = wraps.reduce((sum, wrap, index) => sum + (nodes[index]?.inside ? wrap : -wrap), 0);
        expect(turned).toBeCloseTo(360, 6);
        for (const wrap of wraps) expect(wrap >= 0 && wrap < 360).toBe(true);
      }),
      { seed: 32, numRuns: 300 },
    );
  });

  test("pressing an idler further in makes the belt longer", () => {
    let pressed = 0;
    fc.assert(
      fc.property(loops, between(0.01, 3), (nodes, further) => {
        const { wraps, spans } = sound(m.beltLoop(nodes));
        const at = nodes.findIndex(({ inside }, index) => !inside && (wraps[index] ?? 0) < 90);
        fc.pre(at >= 0);
        const [before, after] = [spans[(at || nodes.length) - 1], spans[at]];
        const middle = (((before?.direction ?? 0) + (after?.direction ?? 0)) / 2) * (Math.PI / 180);
        const flip = Math.abs((before?.direction ?? 0) - (after?.direction ?? 0)) > 180 ? -1 : 1;
        const moved = nodes.map((node, index) =>
          index === at
            ? { ...node, x: node.x - flip * further * Math.sin(middle), y: node.y + flip * further * Math.cos(middle) }
            : node,
        );
        const longer = m.beltLoop(moved);
        fc.pre(!isRefusal(longer));
        pressed++;
        expect(sound(longer).length).toBeGreaterThan(lengthOf(nodes));
      }),
      { seed: 33, numRuns: 200 },
    );
    expect(pressed).toBeGreaterThan(100);
  });
});

describe("laws of a slide", () => {
  const slides = fc.record({
    nodes: loops,
    which: fc.nat(8),
    direction: between(-180, 180),
    from: between(-30, -1),
    to: between(1, 30),
  });

  test("the place found for a length has that length, its slope is the slope, and nearer the middle there is none", () => {
    let found = 0;
    fc.assert(
      fc.property(slides, between(-25, 25), ({ nodes, which, ...rest }, off) => {
        const node = nodes[which % nodes.length]?.name ?? "";
        const slide = { node, ...rest };
        const length = lengthOf(nodes) + off;
        const lengthAt = (at: number) => {
          const angle = (slide.direction * Math.PI) / 180;
          const shift = (each: m.LoopNode) => ({
            ...each,
            x: each.x + at * Math.cos(angle),
            y: each.y + at * Math.sin(angle),
          });
          const loop = m.beltLoop(nodes.map((each) => (each.name === node ? shift(each) : each)));
          return isRefusal(loop) ? Number.NaN : loop.length;
        };
        const place = m.slideForLength(nodes, slide, length);
        const middle = (slide.from + slide.to) / 2;
        const reach = isRefusal(place) ? (slide.to - slide.from) / 2 : Math.abs(place.at - middle);
        if (!isRefusal(place)) {
          found++;
          expect(place.loop.length).toBeCloseTo(length, 9);
          expect(lengthAt(place.at)).toBeCloseTo(length, 8);
          const slope = (lengthAt(place.at + 1e-4) - lengthAt(place.at - 1e-4)) / 2e-4;
          if (Number.isFinite(slope)) expect(place.sensitivity).toBeCloseTo(slope, 4);
        } else if (place.defect?.name === "slide-hardly-tightens") return;
        // No sign change of the excess between any two places that are nearer the middle than the one found.
        const looks = Array.from({ length: 201 }, (_, look) => middle + reach * (1 - 1e-6) * (look / 100 - 1));
        const excess = looks.map((at) => lengthAt(at) - length);
        for (const [index, value] of excess.entries()) {
          const next = excess[index + 1] ?? value;
          expect(value * next < 0, `${value} and ${next} at ${looks[index]}`).toBe(false);
        }
      }),
      { seed: 34, numRuns: 150 },
    );
    expect(found).toBeGreaterThan(40);
  });

  test("looking at a slide once for many lengths gives what looking for each gives", () => {
    fc.assert(
      fc.property(slides, ({ nodes, which, ...rest }) => {
        const slide = { node: nodes[which % nodes.length]?.name ?? "", ...rest };
        const nominal = lengthOf(nodes);
        const stock = Array.from({ length: 9 }, (_, index) => 2 * Math.round(nominal / 2) - 8 + 2 * index);
        const offered = m.stockLoops(nodes, slide, 2, stock);
        fc.pre(!isRefusal(offered));
        for (const { length, position } of sound(offered)) {
          expect(position).toEqual(m.slideForLength(nodes, slide, length));
        }
      }),
      { seed: 35, numRuns: 60 },
    );
  });

  /** A bottom pulley slides below a top one with so little room that only right below it both would touch. */
  const tight = (right: number): m.LoopNode[] => [
    { name: "left", x: -50, y: 0.6, radius: 0.4, inside: true },
    { name: "bottom", x: 0, y: 0, radius: 0.5, inside: true },
    { name: "right", x: 50, y: right, radius: 0.4, inside: true },
    { name: "top", x: 0, y: 0.99, radius: 0.5, inside: true },
  ];
  const below = { node: "bottom", direction: 0, from: -30.9, to: 29.1 };
  const atPlace = (nodes: m.LoopNode[], at: number) =>
    nodes.map((node) => (node.name === "bottom" ? { ...node, x: at } : node));

  test("a gap that the pieces of the slide miss gives no place, and never a wrong one", () => {
    for (const right of [0.6, 0.9]) {
      const nodes = tight(right);
      expect(m.beltLoop(nodes)).toMatchObject({ defect: { name: "nodes-overlap" } });
      const [before, after] = [-0.3, 0.3].map((at) => lengthOf(atPlace(nodes, at)));
      const within = m.slideForLength(nodes, below, ((before ?? 0) + (after ?? 0)) / 2);
      expect(within).toMatchObject({ defect: { name: expect.stringMatching(/^(length-off-slide|slide-hardly)/) } });
      const clear = m.slideForLength(nodes, below, lengthOf(atPlace(nodes, 20)));
      expect(clear).toMatchObject({ defect: { name: "slide-hardly-tightens", limit: { value: 0.2 } } });
    }
  });
});
