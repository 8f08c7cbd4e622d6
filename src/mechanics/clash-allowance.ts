import { bounded } from "./bounded.ts";
import { springSolid } from "./spring-solid.ts";

/** Travel left before the coils touch, as a share of the travel used. At zero or below the spring is solid. */
export const clashAllowance = bounded({
  name: "clash-allowance",
  title: "Clash allowance of a compression spring",
  inputs: {
    freeLength: { symbol: "L0", unit: "mm", meaning: "free length" },
    solidLength: { symbol: "L_solid", unit: "mm", meaning: "length at which the coils touch" },
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest length in use" },
  },
  results: { allowance: { symbol: "xi", unit: "", meaning: "clash allowance; at least 0.15 wanted" } },
  formulas: { allowance: "(L_min - L_solid) / (L0 - L_min)" },
  source: "shigley: 10-3",
  valid: "lengths below the free length; a negative result says by how much the coils have met",
  examples: [
    {
      given: { freeLength: 25, solidLength: 9.6, shortest: 13 },
      gives: { allowance: 0.283 },
      within: 2e-3,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { freeLength: { above: 0 }, solidLength: { above: 0 }, shortest: { above: 0 } },
  compute: ({ freeLength, solidLength, shortest }) => {
    if (solidLength >= freeLength) return springSolid(solidLength, freeLength);
    if (shortest >= freeLength) return { refused: "L_min is not below the free length L0, so the spring is loose" };
    return { allowance: (shortest - solidLength) / (freeLength - shortest) };
  },
});
