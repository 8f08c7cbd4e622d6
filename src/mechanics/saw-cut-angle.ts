import { bounded } from "./bounded.ts";

/** Angle of a saw cut that is not square, from the gap a straight edge shows across the bar. */
export const sawCutAngle = bounded({
  name: "saw-cut-angle",
  title: "Angle of a saw cut",
  inputs: {
    gap: { symbol: "g", unit: "mm", meaning: "gap at the edge of the bar" },
    width: { symbol: "W", unit: "mm", meaning: "bar width" },
  },
  results: { angle: { symbol: "phi", unit: "deg", meaning: "angle out of square" } },
  formulas: { angle: "atand(g / W)" },
  source: "geometry",
  valid: "angles up to 3 deg; beyond it refuses",
  examples: [
    {
      given: { gap: 0.1, width: 20 },
      gives: { angle: 0.28648 },
      within: 1e-4,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { gap: { from: 0 }, width: { above: 0 } },
  compute: ({ gap, width }) => {
    const angle = (Math.atan(gap / width) * 180) / Math.PI;
    return angle <= 3 ? { angle } : { refused: "the cut is over 3 deg out of square: saw it again" };
  },
});
