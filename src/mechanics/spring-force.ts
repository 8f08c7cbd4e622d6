import { bounded } from "./bounded.ts";

/** Force of a compression spring at a length. Holds between the free and the solid length. */
export const springForce = bounded({
  name: "spring-force",
  title: "Force of a compression spring",
  inputs: {
    rate: { symbol: "k", unit: "N/mm", meaning: "spring rate" },
    freeLength: { symbol: "L0", unit: "mm", meaning: "free length" },
    length: { symbol: "L", unit: "mm", meaning: "length under load" },
  },
  results: { force: { symbol: "F", unit: "N", meaning: "spring force" } },
  formulas: { force: "k * (L0 - L)" },
  source: "shigley: 10-3",
  valid: "linear from the free length down to solid; a spring longer than free is refused, since it only pushes",
  examples: [
    {
      given: { rate: 4.9502, freeLength: 20, length: 14 },
      gives: { force: 29.7 },
      within: 1e-3,
      source: "en-13906-1: own arithmetic",
    },
  ],
  limits: { rate: { above: 0 }, freeLength: { above: 0 }, length: { above: 0 } },
  compute: ({ rate, freeLength, length }) => {
    if (length > freeLength) return { refused: "L is above the free length L0, where the spring is loose" };
    return { force: rate * (freeLength - length) };
  },
});
