import { bounded } from "./bounded.ts";

/** Gap in plan between the flanges of two pulleys whose heights overlap; negative when they collide. */
export const pulleyGap = bounded({
  name: "pulley-gap",
  title: "Gap between two pulley bodies",
  inputs: {
    centres: { symbol: "C", unit: "mm", meaning: "distance of the axes" },
    first: { symbol: "R_1", unit: "mm", meaning: "flange radius of one" },
    second: { symbol: "R_2", unit: "mm", meaning: "flange radius of the other" },
  },
  results: { gap: { symbol: "gap", unit: "mm", meaning: "gap between the flanges; at least 2 wanted" } },
  formulas: { gap: "C - R_1 - R_2" },
  source: "geometry",
  valid: "parallel axes, bodies that share a height",
  examples: [
    {
      given: { centres: 32, first: 14, second: 8 },
      gives: { gap: 10 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { centres: { from: 0 }, first: { above: 0 }, second: { above: 0 } },
  compute: ({ centres, first, second }) => ({ gap: centres - first - second }),
});
