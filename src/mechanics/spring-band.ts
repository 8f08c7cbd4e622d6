import { bounded, brief } from "./bounded.ts";

/**
 * Shortest and longest set length of a tram spring: at the low end of its travel the clash allowance is still 0.15, at
 * the high end the spring still pushes with 1.5 times the weight it carries.
 */
export const springBand = bounded({
  name: "spring-band",
  title: "Set lengths a tram spring allows",
  inputs: {
    solidLength: { symbol: "L_solid", unit: "mm", meaning: "length at which the coils touch" },
    freeLength: { symbol: "L0", unit: "mm", meaning: "free length" },
    share: { symbol: "share", unit: "N", meaning: "weight that this spring carries" },
    rate: { symbol: "k", unit: "N/mm", meaning: "spring rate" },
    range: { symbol: "R", unit: "mm", meaning: "tram travel to each side of the set length" },
  },
  results: {
    low: { symbol: "L_low", unit: "mm", meaning: "shortest set length" },
    high: { symbol: "L_high", unit: "mm", meaning: "longest set length" },
  },
  formulas: { low: "(L_solid + 0.15 * L0) / 1.15 + R", high: "L0 - 1.5 * share / k - R" },
  source: "shigley: 10-3, clash allowance",
  valid: "an empty band is refused, with the rate that would open it; the factor 1.5 on the weight is a design rule",
  examples: [
    {
      given: { solidLength: 9.6, freeLength: 25, share: 16, rate: 5.16646, range: 3 },
      gives: { low: 14.609, high: 17.355 },
      within: 3e-5,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    solidLength: { above: 0 },
    freeLength: { above: 0 },
    share: { from: 0 },
    rate: { above: 0 },
    range: { from: 0 },
  },
  compute: ({ solidLength, freeLength, share, rate, range }) => {
    if (solidLength >= freeLength) return { refused: "the spring is solid at its free length" };
    const low = (solidLength + 0.15 * freeLength) / 1.15 + range;
    const high = freeLength - (1.5 * share) / rate - range;
    if (low <= high) return { low, high };
    const room = freeLength - range - low;
    if (room <= 0) return { refused: `the spring is too short for a travel of ${brief(range)} mm to each side` };
    return { refused: `no set length is left; a rate of ${brief((1.5 * share) / room)} N/mm or more opens one` };
  },
});
