import { bounded } from "./bounded.ts";

/** Gap between the lower edge of a belt and a rim, a bridge or a guard below it. */
export const beltRimGap = bounded({
  name: "belt-rim-gap",
  title: "Gap between a belt and a rim below it",
  inputs: {
    plane: { symbol: "z_belt", unit: "mm", meaning: "belt plane above the datum" },
    belt: { symbol: "w_b", unit: "mm", meaning: "belt width" },
    rim: { symbol: "z_rim", unit: "mm", meaning: "top of the rim above the datum" },
  },
  results: {
    gap: { symbol: "gap", unit: "mm", meaning: "air between them; 1 wanted" },
  },
  formulas: {
    gap: "z_belt - w_b / 2 - z_rim",
  },
  source: "geometry",
  valid: "level belt; a negative gap is an overlap",
  examples: [
    { given: { plane: 24, belt: 6, rim: 19 }, gives: { gap: 2 }, within: 1e-9, source: "geometry: own arithmetic" },
  ],
  limits: { belt: { above: 0 } },
  compute: ({ plane, belt, rim }) => ({ gap: plane - belt / 2 - rim }),
});
