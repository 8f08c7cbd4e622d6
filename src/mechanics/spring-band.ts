import { refuse } from "../core/calculation.ts";
import { bounded, brief } from "./bounded.ts";
import { springSolid } from "./spring-solid.ts";

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
    if (solidLength >= freeLength) return springSolid(solidLength, freeLength);
    const low = (solidLength + 0.15 * freeLength) / 1.15 + range;
    const high = freeLength - (1.5 * share) / rate - range;
    if (low <= high) return { low, high };
    const room = freeLength - range - low;
    const band = { found: { value: low, unit: "mm" }, limit: { value: high, unit: "mm" } } as const;
    const why = "shorter the coils would meet, longer the spring would not hold the plate";
    if (room <= 0) {
      const says = `the spring is too short for a travel of ${brief(range)} mm to each side`;
      return refuse({ name: "spring-too-short", says, ...band, why, set: "a longer spring, or less travel" });
    }
    const enough = brief((1.5 * share) / room);
    const says = `no set length is left; a rate of ${enough} N/mm or more opens one`;
    return refuse({ name: "spring-band-empty", says, ...band, why, set: `a spring of ${enough} N/mm or more` });
  },
});
