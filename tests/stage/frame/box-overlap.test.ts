import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overlapOf } from "../../../src/stage/frame/box-overlap.ts";
import { type PlacedBar, placedBars } from "../../../src/stage/frame/placed-bar.ts";
import { widePlan } from "../../support/plans.ts";

type Place = [number, number, number];

function bar(from: Place, to: Place, more: object = {}): PlacedBar {
  const plan = widePlan({ bars: { tried: { bar: "30x30 slot 8", from, to, ...more } } });
  return placedBars(plan).find(({ name }) => name === "tried") as PlacedBar;
}

const shared = (one: PlacedBar, other: PlacedBar) => overlapOf(one, other)?.volume ?? 0;

describe("what two bars share", () => {
  const level = bar([-200, 0, 0], [200, 0, 0]);

  test("two bars of 30 that cross at a right angle at one height share a cube of 30", () => {
    expect(shared(level, bar([0, -200, 0], [0, 200, 0]))).toBeCloseTo(27_000, 6);
  });

  test("crossed at an angle they share a leaning block: 30 x 30 x 30 over the sine (geometry: own arithmetic)", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 160, noNaN: true }), fc.integer({ min: -14, max: 14 }), (angle, rise) => {
        const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
        const other = bar([-200 * c, -200 * s, rise], [200 * c, 200 * s, rise]);
        expect(shared(level, other)).toBeCloseTo((900 * (30 - Math.abs(rise))) / s, 4);
        expect(shared(other, level)).toBeCloseTo(shared(level, other), 4);
      }),
    );
  });

  test("a bar that stands in another by 2 mm shares 30 x 30 x 2", () => {
    expect(shared(level, bar([0, 0, 13], [0, 0, 200]))).toBeCloseTo(1800, 6);
    expect(shared(level, bar([0, 0, 13], [0, 0, 200], { facing: 45 }))).toBeCloseTo(2 * hexagon(30), 6);
  });

  test("bars that only touch share nothing: side by side, end to side, on top", () => {
    expect(shared(level, bar([-200, 30, 0], [200, 30, 0]))).toBe(0);
    expect(shared(level, bar([0, 15, 0], [0, 200, 0]))).toBe(0);
    expect(shared(level, bar([0, 0, 15], [0, 0, 200]))).toBe(0);
  });

  test("an oblong bar on its broad side is wider and lower", () => {
    const oblong = { bar: "20x40 slot 6" };
    const [upright, flat] = [
      bar([0, 0, 0], [100, 0, 0], oblong),
      bar([0, 0, 0], [100, 0, 0], { ...oblong, turned: true }),
    ];
    expect([upright.wide, upright.high]).toEqual([20, 40]);
    expect([flat.wide, flat.high]).toEqual([40, 20]);
    expect(shared(upright, flat)).toBeCloseTo(100 * 20 * 20, 6);
  });

  test("turning both changes nothing", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 360, noNaN: true }), (angle) => {
        const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
        const turn = ([x, y, z]: Place): Place => [x * c - y * s, x * s + y * c, z];
        const [a, b]: [Place, Place] = [
          [10, -80, 5],
          [-20, 90, 30],
        ];
        const still = shared(level, bar(a, b));
        const turned = shared(bar(turn([-200, 0, 0]), turn([200, 0, 0])), bar(turn(a), turn(b)));
        expect(still).toBeGreaterThan(1000);
        expect(turned).toBeCloseTo(still, 3);
      }),
    );
  });
});

/** Area of what a square of side `a` and the same square turned by 45 deg, cut to a strip `a` wide, have in common. */
function hexagon(a: number): number {
  const half = (a * Math.SQRT2) / 2;
  return 2 * half ** 2 - 2 * (half - a / 2) ** 2;
}
