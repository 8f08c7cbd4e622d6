import type { Answers } from "./answers.ts";

/** Keys of a plan under which numbers are no lengths. */
const OTHER: readonly string[] = ["direction", "speed", "volts", "temperature", "sheet", "mass", "print"];

/** Returns data in mm with its lengths in the unit of a plan: to 0.01 mm, or to 0.0001 in. */
export function inUnit(value: unknown, units: Answers["units"], key = ""): unknown {
  if (typeof value === "number") {
    if (OTHER.includes(key)) return value;
    return units === "mm" ? round(value, 100) : round(value / 25.4, 10_000);
  }
  if (Array.isArray(value)) return value.map((one) => inUnit(one, units, key));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, inUnit(one, units, name)]));
}

const round = (value: number, parts: number) => Math.round(value * parts) / parts;
