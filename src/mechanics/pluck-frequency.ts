import { bounded } from "./bounded.ts";

/** Note that a plucked span sounds; a phone that shows the frequency measures the tension with it. */
export const pluckFrequency = bounded({
  name: "pluck-frequency",
  title: "Frequency of a plucked span",
  inputs: {
    tension: { symbol: "T", unit: "N", meaning: "tension of the span" },
    mass: { symbol: "mu", unit: "kg/m", meaning: "mass of the belt per length" },
    span: { symbol: "l", unit: "mm", meaning: "length of the span" },
  },
  results: { frequency: { symbol: "f", unit: "Hz", meaning: "frequency" } },
  formulas: { frequency: "sqrt(T / mu) / (2 * l / 1000)" },
  source: "shigley: 17-1, vibrating string",
  valid: "a span long against the belt's thickness; stiffness raises the note of a short one",
  examples: [
    {
      given: { tension: 15, mass: 0.00852, span: 200 },
      gives: { frequency: 104.9 },
      within: 5e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { tension: { above: 0 }, mass: { above: 0 }, span: { above: 0 } },
  compute: ({ tension, mass, span }) => ({ frequency: Math.sqrt(tension / mass) / ((2 * span) / 1000) }),
});
