import { bounded } from "./bounded.ts";

/** Tension of a belt span from the note it gives when it is plucked. */
export const pluckTension = bounded({
  name: "pluck-tension",
  title: "Tension from a plucked span",
  inputs: {
    frequency: { symbol: "f", unit: "Hz", meaning: "frequency of the note" },
    mass: { symbol: "mu", unit: "kg/m", meaning: "mass of one metre of belt" },
    length: { symbol: "l", unit: "mm", meaning: "free length of the span" },
  },
  results: {
    tension: { symbol: "T", unit: "N", meaning: "tension" },
  },
  formulas: {
    tension: "mu * (2 * l / 1000 * f)^2",
  },
  source: "shigley: 17-1, vibrating string",
  valid: "a span long against the belt's thickness; stiffness raises the note of a short one",
  examples: [
    {
      given: { frequency: 105.0, mass: 0.00852, length: 200 },
      gives: { tension: 15.03 },
      within: 3e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { frequency: { above: 0 }, mass: { above: 0 }, length: { above: 0 } },
  compute: ({ frequency, mass, length }) => ({ tension: mass * ((2 * length * frequency) / 1000) ** 2 }),
});
