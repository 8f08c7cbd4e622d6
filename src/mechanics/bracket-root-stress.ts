import { bounded } from "./bounded.ts";

/** Bending stress at the root of a bracket whose section there is a rectangle. */
export const bracketRootStress = bounded({
  name: "bracket-root-stress",
  title: "Bending stress at a bracket's root",
  inputs: {
    moment: { symbol: "M", unit: "N·mm", meaning: "bending moment at the root" },
    width: { symbol: "b", unit: "mm", meaning: "width of the section, along the axis it bends about" },
    height: { symbol: "h", unit: "mm", meaning: "height of the section, in the plane of bending" },
  },
  results: { stress: { symbol: "sigma", unit: "MPa", meaning: "bending stress" } },
  formulas: { stress: "6 * M / (b * h^2)" },
  source: "shigley: 3-10, bending of a rectangle",
  valid: "straight solid section; notches and layer bonds are left to the allowed stress",
  examples: [
    {
      given: { moment: 1702, width: 32.12, height: 31 },
      gives: { stress: 0.33 },
      within: 0.015,
      source: "statics: own arithmetic",
    },
    {
      given: { moment: 726, width: 30, height: 8 },
      gives: { stress: 2.27 },
      within: 2e-3,
      source: "statics: own arithmetic",
    },
  ],
  limits: { moment: { from: 0 }, width: { above: 0 }, height: { above: 0 } },
  compute: ({ moment, width, height }) => ({ stress: (6 * moment) / (width * height ** 2) }),
});
