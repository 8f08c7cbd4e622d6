import { bounded } from "./bounded.ts";

/** Axial play that the free end of a lead screw needs, since frame and screw grow unequally. */
export const screwFloat = bounded({
  name: "screw-float",
  title: "Axial float of a screw",
  inputs: {
    frame: { symbol: "alpha_f", unit: "1e-6/K", meaning: "expansion of the frame" },
    screw: { symbol: "alpha_s", unit: "1e-6/K", meaning: "expansion of the screw" },
    length: { symbol: "L", unit: "mm", meaning: "length of the screw" },
    warming: { symbol: "dT", unit: "K", meaning: "change of temperature either way" },
  },
  results: {
    difference: { symbol: "delta", unit: "mm", meaning: "difference of growth" },
    play: { symbol: "c", unit: "mm", meaning: "play to leave" },
  },
  formulas: { difference: "abs(alpha_f - alpha_s) * L * dT / 10^6", play: "delta + 0.5" },
  source: "openstax: thermal expansion",
  valid: "at most 200 K; the 0.5 is a design rule",
  examples: [
    {
      given: { frame: 23.4, screw: 12, length: 600, warming: 20 },
      gives: { difference: 0.1368, play: 0.64 },
      within: 6e-3,
      source: "openstax: own arithmetic",
    },
  ],
  limits: {
    frame: { from: 0 },
    screw: { from: 0 },
    length: { above: 0 },
    warming: { from: 0, to: 200 },
  },
  compute: ({ frame, screw, length, warming }) => {
    const difference = (Math.abs(frame - screw) * length * warming) / 1e6;
    return { difference, play: difference + 0.5 };
  },
});
