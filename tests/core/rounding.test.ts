import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { substitute, symbolsOf } from "../../src/core/formula.ts";
import { editDistance, nearest } from "../../src/core/nearest.ts";
import { cosDeg, down, sinDeg, up } from "../../src/core/rounding.ts";

const step = fc.constantFrom(0.05, 0.1, 0.2, 0.25, 0.5, 1);
const value = fc.double({ min: -500, max: 500, noNaN: true });

describe("rounding to steps", () => {
  test.each([
    [6.6, 0.2, 6.6, 6.6],
    [6.7, 0.2, 6.8, 6.6],
    [-13, 0.5, -13, -13],
    [16.56, 0.5, 17, 16.5],
    [0.6000000001, 0.2, 0.6, 0.6],
  ])("%d in steps of %d goes up to %d and down to %d", (number, by, above, under) => {
    expect(up(number, by)).toBe(above);
    expect(down(number, by)).toBe(under);
  });

  test("up is not below, down is not above, and both are steps apart by at most one", () => {
    fc.assert(
      fc.property(value, step, (number, by) => {
        expect(up(number, by)).toBeGreaterThanOrEqual(number - 2e-6 * by);
        expect(down(number, by)).toBeLessThanOrEqual(number + 2e-6 * by);
        expect(up(number, by) - down(number, by)).toBeLessThanOrEqual(by + 1e-8);
        expect(up(up(number, by), by)).toBe(up(number, by));
      }),
    );
  });

  test("quarter turns are exact", () => {
    expect([0, 90, 180, 270, 360, -90].map(cosDeg)).toEqual([1, 0, -1, 0, 1, 0]);
    expect([0, 90, 180, 270, 360, -90].map(sinDeg)).toEqual([0, 1, 0, -1, 0, -1]);
  });
});

describe("words", () => {
  test("the nearest word is found over swaps, gaps and case", () => {
    expect(nearest("screw-foto", ["screw-foot", "tram-mount"])).toBe("screw-foot");
    expect(nearest("On-Side", ["on-side", "on-top"])).toBe("on-side");
    expect(nearest("zebra", ["on-side", "on-top"])).toBeUndefined();
  });

  test("distance is symmetric and zero only for equal words", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
      }),
    );
  });

  test("formulas name their symbols and take values", () => {
    expect(symbolsOf("up(2 * R_h + pi, layer)")).toEqual(["R_h", "layer"]);
    const values = new Map([
      ["a", 2],
      ["b", -3],
    ]);
    expect(substitute("a * b + max(a, c)", values, String)).toBe("2 * (-3) + max(2, c)");
  });
});
