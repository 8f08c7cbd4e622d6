import { bounded } from "./bounded.ts";

/** Diametral clearance that lets two bolts of one leg turn it by an angle to either side. */
export const leeway = bounded({
  name: "leeway",
  title: "Clearance for a leeway angle",
  inputs: {
    spacing: { symbol: "s_b", unit: "mm", meaning: "distance of the two bolts" },
    angle: { symbol: "phi", unit: "deg", meaning: "leeway to either side" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: { clearance: { symbol: "c", unit: "mm", meaning: "diametral clearance, or slot length less its width" } },
  formulas: { clearance: "s_b * tand(phi)" },
  source: "geometry",
  valid: "angle up to 3 deg, bolts at least 2 d apart; outside it refuses",
  examples: [
    {
      given: { spacing: 30, angle: 0.75, diameter: 5 },
      gives: { clearance: 0.393 },
      within: 1e-3,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { spacing: { above: 0 }, angle: { from: 0, to: 3 }, diameter: { above: 0 } },
  compute: ({ spacing, angle, diameter }) => {
    if (spacing < 2 * diameter) return { refused: "the bolts are nearer together than twice their diameter" };
    return { clearance: spacing * Math.tan((angle * Math.PI) / 180) };
  },
});
