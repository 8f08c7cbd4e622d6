import { expect, test } from "vitest";
import { bisect } from "../../src/mechanics/bisect.ts";

test("bisection: zeros at either end, between them to the last bit, and none", () => {
  expect(bisect((at) => at, 0, 1)).toBe(0);
  expect(bisect((at) => at - 1, 0, 1)).toBe(1);
  expect(bisect((at) => at * at - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
  expect(bisect((at) => 0.5 - at, 0, 1)).toBe(0.5);
  expect(bisect((at) => at * at + 1, -1, 1)).toBeUndefined();
});
