import { bounded } from "./bounded.ts";

/** Twist of a plate on four mounts, in order round it: the part of their heights that no tramming takes out. */
export const plateTwist = bounded({
  name: "plate-twist",
  title: "Twist over four mounts",
  inputs: {
    first: { symbol: "h_1", unit: "mm", meaning: "height at the first mount" },
    second: { symbol: "h_2", unit: "mm", meaning: "height at the second, next to it" },
    third: { symbol: "h_3", unit: "mm", meaning: "height at the third, across from the first" },
    fourth: { symbol: "h_4", unit: "mm", meaning: "height at the fourth" },
  },
  results: { twist: { symbol: "t", unit: "mm", meaning: "distance of each mount from the best plane" } },
  formulas: { twist: "(h_1 - h_2 + h_3 - h_4) / 4" },
  source: "geometry",
  valid: "mounts on the corners of a rectangle",
  examples: [
    {
      given: { first: 0.1, second: 0, third: 0.1, fourth: 0 },
      gives: { twist: 0.05 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {},
  compute: ({ first, second, third, fourth }) => ({ twist: (first - second + third - fourth) / 4 }),
});
