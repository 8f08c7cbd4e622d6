import { expect } from "vitest";
import { type Calculation, isRefusal, type Refusal, results } from "../../src/core/calculation.ts";

/** What a figure is about, the value computed for it, and its digits as they stand in print. */
export type Figure = readonly [about: string, computed: () => number, printed: string];

/** Returns half of the last printed digit: `26.18` stands for 26.175 to 26.185, `1.9e3` for 1850 to 1950. */
export function halfDigit(printed: string): number {
  const [digits = "", exponent = "0"] = printed.split("e");
  const decimals = digits.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** Asserts that a value rounds to what was printed; a figure that falls on the half digit may round either way. */
export function expectPrinted(computed: number, printed: string): void {
  const off = Math.abs(computed - Number(printed));
  expect(off, `computed ${computed}, printed ${printed}`).toBeLessThanOrEqual(halfDigit(printed) * (1 + 1e-6));
}

/** Returns one result of a calculation; throws when it refuses. */
export function one<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  result: NoInfer<Result>,
  inputs: Readonly<Record<NoInfer<Input>, number>>,
): number {
  return results(of, inputs)[result];
}

/** Returns the outcome, or throws with the reason of the refusal. */
export function sound<T extends object>(outcome: T | Refusal): T {
  if (isRefusal(outcome)) throw new Error(outcome.refused);
  return outcome as T;
}

export const INCH = 25.4;
/** Pound-force in N, and a pound-force inch in N·mm. */
export const POUND = 4.4482216152605;
export const POUND_INCH = POUND * INCH;
/** A thousand pounds per square inch in MPa. */
export const KSI = (1000 * POUND) / INCH ** 2;
