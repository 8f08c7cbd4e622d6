import { bounded } from "./bounded.ts";

/** Strength constants of spring wire, for diameters in mm (key `shigley`: Table 10-4, from memory). */
export const SPRING_WIRES = {
  "music wire": { strength: 2211, exponent: 0.145 },
  "hard-drawn": { strength: 1783, exponent: 0.19 },
  "stainless 302": { strength: 1867, exponent: 0.146 },
} as const;

/** Least tensile strength of spring wire; thin wire is stronger. Shear is allowed up to 0.45 of it, at most 0.56. */
export const wireStrength = bounded({
  name: "wire-strength",
  title: "Tensile strength of spring wire",
  inputs: {
    strength: { symbol: "A", unit: "MPa", meaning: "strength of a wire of 1 mm" },
    exponent: { symbol: "m", unit: "", meaning: "exponent of the material" },
    wire: { symbol: "d", unit: "mm", meaning: "wire diameter" },
  },
  results: { tensile: { symbol: "S_ut", unit: "MPa", meaning: "least tensile strength" } },
  formulas: { tensile: "A / d^m" },
  source: "shigley: Table 10-4, from memory",
  valid: "wire 0.3 to 3 mm; outside it refuses",
  examples: [
    {
      given: { strength: 2211, exponent: 0.145, wire: 0.9398 },
      gives: { tensile: 2234 },
      within: 2e-3,
      source: "shigley: Example 10-1, 324 kpsi",
    },
  ],
  limits: { strength: { above: 0 }, exponent: { from: 0, to: 1 }, wire: { from: 0.3, to: 3 } },
  compute: ({ strength, exponent, wire }) => ({ tensile: strength / wire ** exponent }),
});
