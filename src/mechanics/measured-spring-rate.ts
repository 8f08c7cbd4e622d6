import { bounded } from "./bounded.ts";

/** Rate of a spring from two readings on a scale. */
export const measuredSpringRate = bounded({
  name: "measured-spring-rate",
  title: "Spring rate from two readings",
  inputs: {
    force1: { symbol: "F_1", unit: "N", meaning: "force at the longer length" },
    length1: { symbol: "L_1", unit: "mm", meaning: "longer length" },
    force2: { symbol: "F_2", unit: "N", meaning: "force at the shorter length" },
    length2: { symbol: "L_2", unit: "mm", meaning: "shorter length" },
  },
  results: { rate: { symbol: "k", unit: "N/mm", meaning: "spring rate" } },
  formulas: { rate: "(F_2 - F_1) / (L_1 - L_2)" },
  source: "statics",
  valid: "both readings between free and solid; readings that do not stiffen are refused",
  examples: [
    {
      given: { force1: 10, length1: 23, force2: 30, length2: 19 },
      gives: { rate: 5 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { force1: { from: 0 }, length1: { above: 0 }, force2: { above: 0 }, length2: { above: 0 } },
  compute: ({ force1, length1, force2, length2 }) => {
    if (length2 >= length1) return { refused: "L_2 is not below L_1" };
    if (force2 <= force1) return { refused: "F_2 is not above F_1" };
    return { rate: (force2 - force1) / (length1 - length2) };
  },
});
