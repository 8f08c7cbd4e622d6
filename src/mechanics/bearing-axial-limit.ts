import { bounded } from "./bounded.ts";

/** Largest axial load of a deep-groove ball bearing that carries nothing else. */
export const bearingAxialLimit = bounded({
  name: "bearing-axial-limit",
  title: "Axial limit of a ball bearing",
  inputs: {
    rating: { symbol: "C_0", unit: "N", meaning: "static load rating" },
    small: { symbol: "small", unit: "", meaning: "1 for a bore up to 12 mm or a light series, else 0" },
  },
  results: { limit: { symbol: "F_a_max", unit: "N", meaning: "largest axial load" } },
  formulas: { limit: "(0.5 - 0.25 * small) * C_0" },
  source: "bearing-makers: axial load of deep-groove bearings",
  valid: "purely axial load, still or slow turning",
  examples: [
    {
      given: { rating: 1370, small: 1 },
      gives: { limit: 342.5 },
      within: 1e-9,
      source: "bearing-makers: own arithmetic",
    },
  ],
  limits: { rating: { above: 0 }, small: { from: 0, to: 1, whole: true } },
  compute: ({ rating, small }) => ({ limit: (0.5 - 0.25 * small) * rating }),
});
