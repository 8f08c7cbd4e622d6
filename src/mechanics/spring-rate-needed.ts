import { bounded } from "./bounded.ts";

/** Least rate with which a spring of given free and solid length still has a set length to choose. */
export const springRateNeeded = bounded({
  name: "spring-rate-needed",
  title: "Least rate of a tram spring",
  inputs: {
    solidLength: { symbol: "L_solid", unit: "mm", meaning: "length at which the coils touch" },
    freeLength: { symbol: "L0", unit: "mm", meaning: "free length" },
    share: { symbol: "share", unit: "N", meaning: "weight that this spring carries" },
    range: { symbol: "R", unit: "mm", meaning: "tram travel to each side of the set length" },
  },
  results: { rate: { symbol: "k", unit: "N/mm", meaning: "least spring rate" } },
  formulas: { rate: "1.5 * share / (L0 - 2 * R - (L_solid + 0.15 * L0) / 1.15)" },
  source: "shigley: 10-3, clash allowance",
  valid: "the band of set lengths is exactly one length at this rate; a spring too short at any rate is refused",
  examples: [
    {
      given: { solidLength: 9.6, freeLength: 25, share: 16, range: 3 },
      gives: { rate: 3.247 },
      within: 1e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { solidLength: { above: 0 }, freeLength: { above: 0 }, share: { above: 0 }, range: { from: 0 } },
  compute: ({ solidLength, freeLength, share, range }) => {
    const room = freeLength - 2 * range - (solidLength + 0.15 * freeLength) / 1.15;
    if (room <= 0) return { refused: "the spring is too short for this travel, whatever its rate" };
    return { rate: (1.5 * share) / room };
  },
});
