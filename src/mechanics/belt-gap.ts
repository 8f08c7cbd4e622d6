import { bounded } from "./bounded.ts";

/** Height between the edges of two belts at different planes; negative when they overlap. */
export const beltGap = bounded({
  name: "belt-gap",
  title: "Gap between two belts",
  inputs: {
    planeA: { symbol: "z_A", unit: "mm", meaning: "plane of one belt" },
    planeB: { symbol: "z_B", unit: "mm", meaning: "plane of the other" },
    widthA: { symbol: "w_A", unit: "mm", meaning: "width of one belt" },
    widthB: { symbol: "w_B", unit: "mm", meaning: "width of the other" },
  },
  results: { gap: { symbol: "gap", unit: "mm", meaning: "gap between the belts; at least 2 wanted" } },
  formulas: { gap: "abs(z_A - z_B) - (w_A + w_B) / 2" },
  source: "geometry",
  valid: "level belts whose paths meet in plan",
  examples: [
    {
      given: { planeA: 24, planeB: 32, widthA: 6, widthB: 6 },
      gives: { gap: 2 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { widthA: { above: 0 }, widthB: { above: 0 } },
  compute: ({ planeA, planeB, widthA, widthB }) => ({ gap: Math.abs(planeA - planeB) - (widthA + widthB) / 2 }),
});
