import Quantity from "js-quantities";
import { expect, test } from "vitest";
import { INSIDE, type Kind, readQuantity } from "../../src/core/quantity.ts";
import { dice } from "./random.ts";

/** A unit as it is written here, what js-quantities calls it, and to how many parts in one that library has it. */
type Shared = readonly [typed: string, there: string, precision: number];

const EXACT = 1e-12;
/** The library keeps its pound of force and its ounce to seven digits, its psi to six. */
const SEVEN = 2e-7;
const SIX = 1e-6;

/** Units that both know; what is missing (kgf, ozf) js-quantities does not have. */
const SHARED: Readonly<Partial<Record<Kind, readonly Shared[]>>> = {
  length: [
    ["mm", "mm", EXACT],
    ["cm", "cm", EXACT],
    ["m", "m", EXACT],
    ["um", "um", EXACT],
    ["in", "in", EXACT],
    ["inch", "inch", EXACT],
    ['"', "in", EXACT],
    ["ft", "ft", EXACT],
    ["'", "ft", EXACT],
  ],
  angle: [
    ["deg", "deg", EXACT],
    ["rad", "rad", EXACT],
  ],
  force: [
    ["N", "N", EXACT],
    ["kN", "kN", EXACT],
    ["lbf", "lbf", SEVEN],
  ],
  rate: [
    ["N/mm", "N/mm", EXACT],
    ["N/m", "N/m", EXACT],
    ["lbf/in", "lbf/in", SEVEN],
  ],
  torque: [
    ["N·m", "N*m", EXACT],
    ["Ncm", "N*cm", EXACT],
    ["N cm", "N*cm", EXACT],
    ["N mm", "N*mm", EXACT],
    ["mN·m", "mN*m", EXACT],
    ["lbf in", "lbf*in", SEVEN],
    ["ft·lbf", "ft*lbf", SEVEN],
  ],
  mass: [
    ["kg", "kg", EXACT],
    ["g", "g", EXACT],
    ["lb", "lb", EXACT],
    ["oz", "oz", SEVEN],
  ],
  temperature: [
    ["°C", "tempC", EXACT],
    ["°F", "tempF", EXACT],
    ["K", "tempK", EXACT],
  ],
  pressure: [
    ["MPa", "MPa", EXACT],
    ["N/mm2", "N/mm^2", EXACT],
    ["psi", "psi", SIX],
  ],
  power: [
    ["W", "W", EXACT],
    ["kW", "kW", EXACT],
  ],
};

const INSIDE_THERE: Readonly<Partial<Record<Kind, string>>> = { temperature: "tempC", torque: "N*m" };

// Source: js-quantities, a general-purpose library of units with definitions of its own.
test.each(Object.entries(SHARED))("every shared unit of a %s converts as js-quantities has it", (kind, units) => {
  const roll = dice(61);
  expect(units.length).toBeGreaterThan(1);
  for (const [typed, there, precision] of units) {
    for (let round = 0; round < 25; round++) {
      const amount = kind === "temperature" ? roll.between(250, 500) : roll.between(0.01, 5000);
      const reading = readQuantity(`${amount} ${typed}`, kind as Kind);
      const expected = Quantity(amount, there).to(INSIDE_THERE[kind as Kind] ?? INSIDE[kind as Kind]).scalar;
      const off = "value" in reading ? Math.abs(reading.value - expected) : Number.NaN;
      // What is read is kept to nine decimals; a temperature's offset loses a few more of the library's digits.
      const allowed = 1e-9 + precision * Math.abs(expected);
      expect(off, `${amount} ${typed} is ${expected} there`).toBeLessThanOrEqual(allowed);
    }
  }
});
