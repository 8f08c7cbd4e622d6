import { bounded } from "./bounded.ts";

/** Height between a belt and the flange of a pulley of the other loop; negative when they overlap. */
export const beltFlangeGap = bounded({
  name: "belt-flange-gap",
  title: "Gap between a belt and a foreign flange",
  inputs: {
    plane: { symbol: "z_A", unit: "mm", meaning: "plane of the belt" },
    width: { symbol: "w_b", unit: "mm", meaning: "belt width" },
    foreignPlane: { symbol: "z_B", unit: "mm", meaning: "plane of the pulley" },
    groove: { symbol: "w_t", unit: "mm", meaning: "width between the pulley's flanges" },
    flange: { symbol: "t_f", unit: "mm", meaning: "flange thickness" },
  },
  results: { gap: { symbol: "gap", unit: "mm", meaning: "gap between belt and flange; at least 1 wanted" } },
  formulas: { gap: "abs(z_A - z_B) - (w_b / 2 + w_t / 2 + t_f)" },
  source: "geometry",
  valid: "level belt whose path meets the flange in plan",
  examples: [
    {
      given: { plane: 24, width: 6, foreignPlane: 32, groove: 7, flange: 1 },
      gives: { gap: 0.5 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { width: { above: 0 }, groove: { above: 0 }, flange: { from: 0 } },
  compute: ({ plane, width, foreignPlane, groove, flange }) => ({
    gap: Math.abs(plane - foreignPlane) - (width / 2 + groove / 2 + flange),
  }),
});
