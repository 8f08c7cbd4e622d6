import { bounded } from "./bounded.ts";

/** Angle to either side by which two bolts in clearance holes let a leg turn. */
export const leewayAngle = bounded({
  name: "leeway-angle",
  title: "Leeway angle of a clearance",
  inputs: {
    spacing: { symbol: "s_b", unit: "mm", meaning: "distance of the two bolts" },
    clearance: { symbol: "c", unit: "mm", meaning: "diametral clearance" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: { angle: { symbol: "phi", unit: "deg", meaning: "leeway to either side" } },
  formulas: { angle: "atand(c / s_b)" },
  source: "geometry",
  valid: "angle up to 3 deg, bolts at least 2 d apart; outside it refuses",
  examples: [
    {
      given: { spacing: 30, clearance: 0.5, diameter: 5 },
      gives: { angle: 0.955 },
      within: 6e-4,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { spacing: { above: 0 }, clearance: { from: 0 }, diameter: { above: 0 } },
  compute: ({ spacing, clearance, diameter }) => {
    if (spacing < 2 * diameter) return { refused: "the bolts are nearer together than twice their diameter" };
    const angle = (Math.atan(clearance / spacing) * 180) / Math.PI;
    return angle <= 3 ? { angle } : { refused: "the clearance lets the leg turn by over 3 deg" };
  },
});
