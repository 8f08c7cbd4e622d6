import { describe, expect, test } from "vitest";
import { thumbWheel } from "../../../src/parts/thumb-wheel/index.ts";
import { printerWith } from "../../support/printer.ts";

/** All figures of this file were worked by hand for this project. */

function numbersOf(parameters: object): Map<string, number> {
  const design = thumbWheel.design(thumbWheel.schema.parse(parameters) as never, printerWith());
  return new Map(design.dimensions.map(({ symbol, value }) => [symbol, value]));
}

describe("the M5 wheel", () => {
  test.each([
    ["R_k", 12, 6],
    ["h_k", 8.2, 6],
    ["h_n", 5.1, 6],
    ["f_w", 3.1, 6],
    ["r_s", 3, 6],
    ["c_s", 13.5, 6],
    ["h_s", 1.5, 6],
    ["w_l", 2.63, 2],
    ["r_c", 4.65, 2],
    ["d_m", 5.5, 6],
    ["s_p", 8.05, 6],
    ["h_l", 0.08, 6],
    ["g_b", 3.9, 6],
    ["D_f", 21, 6],
  ] as const)("%s = %f", (symbol, value, digits) => {
    expect(numbersOf({}).get(symbol)).toBeCloseTo(value, digits);
  });
});

test.each([
  ["M3", 5.8, 20],
  ["M4", 6.6, 20],
  ["M5", 8.2, 24],
  ["M6", 8.6, 24],
] as const)("an %s wheel is %f mm high and %f mm wide", (bolt, height, diameter) => {
  const numbers = numbersOf({ bolt });
  expect(numbers.get("h_k")).toBeCloseTo(height, 6);
  expect(2 * (numbers.get("R_k") ?? 0)).toBe(diameter);
});

test("a lock nut makes it higher by what the nut is higher, up to a layer", () => {
  expect(numbersOf({ lockNut: true }).get("h_k")).toBeCloseTo(8.4, 6);
  expect(numbersOf({ bolt: "M3", lockNut: true }).get("h_k")).toBeCloseTo(7.4, 6);
});
