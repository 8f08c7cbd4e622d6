import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Vec3 } from "../../../src/geometry/mesh.ts";
import { nearestOf } from "../../../src/stage/frame/bar-distance.ts";
import { frameDefects } from "../../../src/stage/frame/frame-defects.ts";
import { cornersOf, placedBar } from "../../../src/stage/frame/placed-bar.ts";
import { widePlan } from "../../support/plans.ts";

type Change = Readonly<Record<string, unknown>>;

const found = (change: Change) =>
  frameDefects(widePlan(change))
    .filter(({ name }) => name === "bar-joins-no-other")
    .map(({ path, set, found: has }) => [path.join("."), has?.value.toFixed(2), set]);

describe("a bar that touches no other", () => {
  test("is told of with the nearest one, and lengthened at both ends it is joined", () => {
    // The arm behind ends 40 and 25 short of the side arms, whose faces are at 65.5 and 694.5.
    const between = { "arm-back": { from: [105.5, 430, 115], to: [669.5, 430, 115] } };
    expect(found({ bars: between })).toEqual([
      ["bars.arm-back", "25.00", "bars.arm-back: from: [65.5, 430, 115] and to: [694.5, 430, 115]"],
    ]);
    expect(found({ bars: { "arm-back": { from: [65.5, 430, 115], to: [694.5, 430, 115] } } })).toEqual([]);
  });

  test("a post in the air is put down onto the frame", () => {
    const air = { "post-left": { from: [15, 280, 40], to: [15, 280, 500] } };
    expect(found({ bars: air })).toEqual([["bars.post-left", "40.00", "bars.post-left: from: [15, 280, 0]"]]);
    expect(found({ bars: { "post-left": { from: [15, 280, 6], to: [15, 280, 500] } } })).toEqual([]);
    expect(found({ bars: { "post-left": { from: [15, 280, 6.1], to: [15, 280, 500] } } })).toHaveLength(1);
  });

  test("one that points nowhere is moved", () => {
    const off = { shelf: { bar: "30x30 slot 8", from: [100, 200, -15], to: [300, 200, -15] } };
    const [[, gap, set] = []] = found({ bars: off });
    expect([gap, set]).toEqual(["70.00", "bars.shelf: from: [30, 200, -15] and to: [230, 200, -15]"]);
  });

  test("what is bolted to a carriage is held, and what stands still holds nothing that rises", () => {
    const alone = { "arm-front": { from: [35.5, 96, 200], to: [724.5, 96, 200] } };
    expect(found({ bars: alone })).toHaveLength(1);
    const carried = { carriages: { left: { arms: ["side-left", "arm-front"] } } };
    expect(found({ bars: alone, ...carried })).toEqual([]);
    const onFrame = { "arm-front": { from: [35.5, 15, 15], to: [724.5, 15, 15] } };
    expect(found({ bars: onFrame })).toHaveLength(1);
  });
});

describe("the gap between two bars", () => {
  const at = fc.integer({ min: -300, max: 300 });
  const place: fc.Arbitrary<Vec3> = fc.tuple(at, at, at);
  const bar = fc.tuple(place, place).filter(([from, to]) => Math.hypot(...from.map((at, i) => at - to[i as 0])) > 1);

  // Geometry: no place of either box, its corners among them, may be nearer; and both ends lie in their boxes.
  test("is no longer than between any two of their places, and the same from both sides", () => {
    const read = widePlan().bars.left;
    if (read === undefined) throw new Error("the wide machine has a bar on its left");
    fc.assert(
      fc.property(
        bar,
        bar,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 16, maxLength: 16 }),
        (a, b, t) => {
          const [one, other] = [a, b].map(([from, to], at) =>
            placedBar(`${at}`, { ...read, from: [...from], to: [...to] }),
          );
          if (one === undefined || other === undefined) throw new Error("two bars");
          const { gap } = nearestOf(one, other);
          expect(Math.abs(nearestOf(other, one).gap - gap)).toBeLessThan(1e-5);
          const mixed = (all: readonly Vec3[], weights: readonly number[]) => {
            const sum = weights.reduce((total, each) => total + each, 0) || 1;
            return [0, 1, 2].map((axis) =>
              all.reduce((s, corner, i) => s + (corner[axis as 0] * (weights[i] ?? 0)) / sum, 0),
            );
          };
          const [p, q] = [mixed(cornersOf(one), t.slice(0, 8)), mixed(cornersOf(other), t.slice(8))];
          if (t.slice(0, 8).some((x) => x > 0) && t.slice(8).some((x) => x > 0))
            expect(Math.hypot(...p.map((at, axis) => at - (q[axis] ?? 0)))).toBeGreaterThanOrEqual(gap - 1e-5);
          for (const corner of cornersOf(one))
            for (const its of cornersOf(other))
              expect(Math.hypot(...corner.map((at, axis) => at - its[axis as 0]))).toBeGreaterThanOrEqual(gap - 1e-5);
        },
      ),
      {
        numRuns: 300,
        // Two that touch, and that a search in turns alone had 0.05 mm apart.
        examples: [
          [
            [
              [0, 0, 123],
              [-31, 0, 143],
            ],
            [
              [154, 0, 64],
              [-124, 6, 236],
            ],
            Array(16).fill(0),
          ],
        ],
      },
    );
  });
});
