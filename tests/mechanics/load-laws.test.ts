import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one, sound } from "./printed.ts";

const seed = 5;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("loads", () => {
  const place = between(-500, 500);

  test("three screws carry the weight and its moment, and turning the stage changes nothing", () => {
    fc.assert(
      fc.property(place, place, between(-180, 180), (x, y, turn) => {
        const points = [x, y, 0, 0, 300, 0, 150, 260];
        const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        const share = (v: number[]) => {
          const [x = 0, y = 0, xA = 0, yA = 0, xB = 0, yB = 0, xC = 0, yC = 0] = v;
          return sound(m.loadShare.compute({ weight: 30, x, y, xA, yA, xB, yB, xC, yC }));
        };
        const { onA, onB, onC } = share(points);
        expect(onA + onB + onC).toBeCloseTo(30, 9);
        expect(300 * onB + 150 * onC).toBeCloseTo(30 * x, 6);
        expect(260 * onC).toBeCloseTo(30 * y, 6);
        const turned = points.map((v, i) =>
          i % 2 === 0 ? cos * v - sin * (points[i + 1] ?? 0) : sin * (points[i - 1] ?? 0) + cos * v,
        );
        expect(share(turned).onA).toBeCloseTo(onA, 7);
      }),
      { seed },
    );
  });

  test("over a screw that screw carries all, and screws in line are refused", () => {
    const flat = { weight: 30, xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 14 };
    expect(m.loadShare.compute({ ...flat, x: 0, y: 0 })).toHaveProperty("refused");
    const { onA, onB, onC } = sound(m.loadShare.compute({ ...flat, yC: 16, x: 300, y: 0 }));
    expect([onA, onB, onC].map((load) => Math.round(load * 1e9) / 1e9 + 0)).toEqual([0, 30, 0]);
  });

  const square = [
    { x: 0, y: 0 },
    { x: 400, y: 0 },
    { x: 400, y: 300 },
    { x: 0, y: 300 },
  ];

  test("four screws: the equal share lies within the bounds at the middle", () => {
    const { bounds, lifts } = sound(m.fourScrewBounds(square, 40, { x: 200, y: 150 }));
    expect(lifts).toBe(false);
    for (const { least, most } of bounds) {
      expect(least).toBeCloseTo(0, 9);
      expect(most).toBeCloseTo(20, 9);
    }
  });

  test("four screws: inside, every bound is a load that pushes and the bounds enclose an even twist", () => {
    fc.assert(
      fc.property(between(0, 400), between(0, 300), (x, y) => {
        const { bounds, lifts } = sound(m.fourScrewBounds(square, 40, { x, y }));
        expect(lifts).toBe(false);
        const even = [
          (1 - x / 400) * (1 - y / 300),
          (x / 400) * (1 - y / 300),
          ((x / 400) * y) / 300,
          ((1 - x / 400) * y) / 300,
        ];
        for (const [index, { least, most }] of bounds.entries()) {
          expect(least).toBeGreaterThanOrEqual(-1e-7);
          expect(40 * (even[index] ?? 0)).toBeGreaterThanOrEqual(least - 1e-7);
          expect(40 * (even[index] ?? 0)).toBeLessThanOrEqual(most + 1e-7);
        }
      }),
      { seed },
    );
  });

  test("four screws: outside, a corner lifts; three screws or a line are refused", () => {
    const outside = sound(m.fourScrewBounds(square, 40, { x: 450, y: 150 }));
    expect(outside.lifts).toBe(true);
    expect(Math.min(...outside.bounds.map(({ least }) => least))).toBeLessThan(0);
    expect(m.fourScrewBounds(square.slice(1), 40, { x: 0, y: 0 })).toHaveProperty("refused");
    const line = square.map(({ x }, index) => ({ x: x + index, y: 0 }));
    expect(m.fourScrewBounds(line, 40, { x: 0, y: 0 })).toHaveProperty("refused");
  });

  test("masses add up to one weight at their balance point", () => {
    const masses = [
      { mass: 3, x: 0, y: 0 },
      { mass: 1, x: 400, y: 200 },
    ];
    expect(m.centreOfMass(masses)).toEqual({ x: 100, y: 50, weight: 4 * 9.80665 });
    expect(m.centreOfMass([])).toHaveProperty("refused");
    expect(m.centreOfMass([{ mass: -1, x: 0, y: 0 }])).toHaveProperty("refused");
    expect(m.centreOfMass([{ mass: 1, x: Number.NaN, y: 0 }])).toHaveProperty("refused");
  });

  test("pulls on one shaft add as arrows: two spans of one wrap give the single pull", () => {
    fc.assert(
      fc.property(between(0, 180), between(1, 50), (wrap, tension) => {
        const spans = [
          { direction: 90 - wrap / 2, tension },
          { direction: 270 + wrap / 2, tension },
        ];
        const turned = spans.map((span) => ({ ...span, direction: span.direction + 33 }));
        const { pull } = sound(m.summedPull(turned));
        expect(pull).toBeCloseTo(one(m.shaftPull, "pull", { tension, wrap }), 9);
      }),
      { seed },
    );
    const across = sound(m.summedPull([{ direction: 30, tension: 5 }]));
    expect(across.direction).toBeCloseTo(30, 9);
    const level = sound(m.summedPull([20, -20].map((direction) => ({ direction, tension: 5 }))));
    expect(level.direction).toBe(0);
    expect(m.summedPull([{ direction: Number.NaN, tension: 5 }])).toHaveProperty("refused");
  });
});
