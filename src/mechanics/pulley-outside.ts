import { bounded } from "./bounded.ts";

/** Pitch and outside diameter of a toothed pulley: the belt rides outside its own pulley. */
export const pulleyOutside = bounded({
  name: "pulley-outside",
  title: "Diameters of a toothed pulley",
  inputs: {
    teeth: { symbol: "z", unit: "", meaning: "number of teeth" },
    pitch: { symbol: "p", unit: "mm", meaning: "pitch" },
    line: { symbol: "u", unit: "mm", meaning: "pitch line above the outside of the pulley" },
  },
  results: {
    pitchDiameter: { symbol: "d_p", unit: "mm", meaning: "pitch diameter" },
    outside: { symbol: "d_o", unit: "mm", meaning: "outside diameter, over the teeth" },
  },
  formulas: {
    pitchDiameter: "z * p / pi",
    outside: "d_p - 2 * u",
  },
  source: "belt-makers: pulley pages",
  valid: "whole teeth, at least 8; a pitch line outside the pulley radius is refused",
  examples: [
    {
      given: { teeth: 20, pitch: 2, line: 0.254 },
      gives: { pitchDiameter: 12.732, outside: 12.224 },
      within: 5e-5,
      source: "belt-makers: pulley page",
    },
    {
      given: { teeth: 20, pitch: 5, line: 0.415 },
      gives: { pitchDiameter: 31.83, outside: 31 },
      within: 5e-5,
      source: "belt-makers: T5 pulley table",
    },
  ],
  limits: { teeth: { from: 8, whole: true }, pitch: { above: 0 }, line: { from: 0 } },
  compute: ({ teeth, pitch, line }) => {
    const pitchDiameter = (teeth * pitch) / Math.PI;
    const outside = pitchDiameter - 2 * line;
    return outside > 0 ? { pitchDiameter, outside } : { refused: "the pitch line lies deeper than the pulley" };
  },
});
