import { bounded } from "./bounded.ts";

/** Radius of the belt's pitch line on a smooth idler: on the belt's back, and on its teeth. */
export const smoothIdlerRadius = bounded({
  name: "smooth-idler-radius",
  title: "Pitch-line radius on a smooth idler",
  inputs: {
    diameter: { symbol: "D", unit: "mm", meaning: "diameter the belt runs on" },
    thickness: { symbol: "t", unit: "mm", meaning: "belt thickness, teeth included" },
    tooth: { symbol: "h_t", unit: "mm", meaning: "tooth height" },
    line: { symbol: "PLD", unit: "mm", meaning: "pitch line above the land between the teeth" },
  },
  results: {
    back: { symbol: "r_back", unit: "mm", meaning: "radius on the belt's back" },
    teeth: { symbol: "r_teeth", unit: "mm", meaning: "radius on the belt's teeth, near enough: their tips ride on it" },
  },
  formulas: { back: "D / 2 + t - h_t - PLD", teeth: "D / 2 + h_t + PLD" },
  source: "geometry",
  valid: "idler without teeth; on the tooth side the belt hums and wears, and the radius is not exact",
  examples: [
    {
      given: { diameter: 18, thickness: 1.38, tooth: 0.75, line: 0.254 },
      gives: { back: 9.376, teeth: 10.004 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { diameter: { above: 0 }, thickness: { above: 0 }, tooth: { above: 0 }, line: { from: 0 } },
  compute: ({ diameter, thickness, tooth, line }) => {
    if (tooth + line >= thickness) return { refused: "tooth and pitch line are as thick as the belt" };
    return { back: diameter / 2 + thickness - tooth - line, teeth: diameter / 2 + tooth + line };
  },
});
