import { bounded } from "./bounded.ts";

/** Gap in plan between two spans of one loop. */
export const spanGap = bounded({
  name: "span-gap",
  title: "Gap between two spans of a loop",
  inputs: {
    distance: { symbol: "a", unit: "mm", meaning: "smallest plan distance of the two pitch lines, pulleys left out" },
    height: { symbol: "h_b", unit: "mm", meaning: "belt height, teeth included" },
  },
  results: {
    gap: { symbol: "gap", unit: "mm", meaning: "air between them; 2 wanted" },
  },
  formulas: {
    gap: "a - 2 * h_b",
  },
  source: "geometry",
  valid:
    "each span is taken as a whole belt height thick to either side, which is the safe side; a negative gap is an overlap",
  examples: [
    {
      given: { distance: 12.732, height: 1.38 },
      gives: { gap: 9.972 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { distance: { from: 0 }, height: { above: 0 } },
  compute: ({ distance, height }) => ({ gap: distance - 2 * height }),
});
