import { bounded } from "./bounded.ts";

/** Bending moment that thrust and belt pull put on a bracket's root. */
export const rootMoment = bounded({
  name: "root-moment",
  title: "Moment at a bracket's root",
  inputs: {
    axial: { symbol: "F_a", unit: "N", meaning: "thrust along the screw" },
    lever: { symbol: "a", unit: "mm", meaning: "distance of the screw's axis from the root" },
    pull: { symbol: "F_r", unit: "N", meaning: "belt pull across the screw" },
    height: { symbol: "h", unit: "mm", meaning: "height of the belt plane above the point the moment is taken about" },
  },
  results: { moment: { symbol: "M", unit: "N·mm", meaning: "bending moment" } },
  formulas: { moment: "F_a * a + F_r * abs(h)" },
  source: "statics",
  valid: "both forces in the plane that bends the bracket most; the two parts are added even if they would cancel",
  examples: [
    {
      given: { axial: 50, lever: 17, pull: 30, height: 28.4 },
      gives: { moment: 1702 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { axial: { from: 0 }, lever: { from: 0 }, pull: { from: 0 } },
  compute: ({ axial, lever, pull, height }) => ({ moment: axial * lever + pull * Math.abs(height) }),
});
