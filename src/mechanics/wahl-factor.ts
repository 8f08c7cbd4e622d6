import { bounded } from "./bounded.ts";

/** Factor for curvature and direct shear by Wahl, about 1 % above the curvature factor of spring-stress. */
export const wahlFactor = bounded({
  name: "wahl-factor",
  title: "Wahl factor of a compression spring",
  inputs: {
    index: { symbol: "C", unit: "", meaning: "spring index" },
  },
  results: {
    factor: { symbol: "K_W", unit: "", meaning: "factor on the shear stress" },
  },
  formulas: {
    factor: "(4 * C - 1) / (4 * C - 4) + 0.615 / C",
  },
  source: "shigley: 10-1, Wahl factor",
  valid: "round wire, index 3 to 16; outside it refuses",
  examples: [{ given: { index: 7 }, gives: { factor: 1.213 }, within: 4e-4, source: "shigley: own arithmetic" }],
  limits: { index: { from: 3, to: 16 } },
  compute: ({ index }) => ({ factor: (4 * index - 1) / (4 * index - 4) + 0.615 / index }),
});
