import { bounded } from "./bounded.ts";

/** Free length up to which a spring between flat plates cannot buckle, however far it is pressed. */
export const springStability = bounded({
  name: "spring-stability",
  title: "Stability of a compression spring",
  inputs: {
    freeLength: { symbol: "L0", unit: "mm", meaning: "free length" },
    meanDiameter: { symbol: "D_m", unit: "mm", meaning: "mean coil diameter" },
  },
  results: {
    slenderness: { symbol: "lambda", unit: "", meaning: "free length over mean diameter; up to 4 wanted" },
    critical: { symbol: "L_cr", unit: "mm", meaning: "free length from which it may buckle" },
  },
  formulas: { slenderness: "L0 / D_m", critical: "5.26 * D_m" },
  source: "shigley: 10-5",
  valid: "steel, ends squared and between parallel plates; a bolt inside guides it besides",
  examples: [
    {
      given: { freeLength: 50.8, meanDiameter: 10.16 },
      gives: { critical: 53.34 },
      within: 3e-3,
      source: "shigley: Example 10-1, 2.10 in",
    },
    {
      given: { freeLength: 25, meanDiameter: 8.8 },
      gives: { slenderness: 2.84 },
      within: 5e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { freeLength: { above: 0 }, meanDiameter: { above: 0 } },
  compute: ({ freeLength, meanDiameter }) => ({
    slenderness: freeLength / meanDiameter,
    critical: 5.26 * meanDiameter,
  }),
});
