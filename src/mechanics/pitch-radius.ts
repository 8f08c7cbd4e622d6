import { bounded } from "./bounded.ts";

/** Radius of the belt's pitch line on a toothed pulley or toothed idler. */
export const pitchRadius = bounded({
  name: "pitch-radius",
  title: "Pitch radius of a pulley",
  inputs: {
    teeth: { symbol: "z", unit: "", meaning: "teeth" },
    pitch: { symbol: "p", unit: "mm", meaning: "belt pitch" },
  },
  results: { radius: { symbol: "r_p", unit: "mm", meaning: "pitch radius" } },
  formulas: { radius: "z * p / (2 * pi)" },
  source: "iso-13050",
  valid: "whole teeth, at least 8",
  examples: [
    {
      given: { teeth: 20, pitch: 2 },
      gives: { radius: 6.366 },
      within: 5e-5,
      source: "belt-makers: pitch diameter 12.732",
    },
    {
      given: { teeth: 20, pitch: 5 },
      gives: { radius: 15.915 },
      within: 2e-4,
      source: "iso-17396: T5 with 20 teeth, 31.83",
    },
  ],
  limits: { teeth: { from: 8, whole: true }, pitch: { above: 0 } },
  compute: ({ teeth, pitch }) => ({ radius: (teeth * pitch) / (2 * Math.PI) }),
});
