import { bounded } from "./bounded.ts";

/** Teeth in mesh on the smaller of two pulleys, as belt makers estimate them. */
export const meshEstimate = bounded({
  name: "mesh-estimate",
  title: "Teeth in mesh, estimated",
  inputs: {
    teeth: { symbol: "z", unit: "", meaning: "teeth of the smaller pulley" },
    large: { symbol: "D", unit: "mm", meaning: "pitch diameter of the larger pulley" },
    small: { symbol: "d", unit: "mm", meaning: "pitch diameter of the smaller pulley" },
    centres: { symbol: "C", unit: "mm", meaning: "centre distance" },
  },
  results: {
    mesh: { symbol: "z_m", unit: "", meaning: "teeth in mesh, before it is rounded down" },
  },
  formulas: {
    mesh: "z * (0.5 - (D - d) / (6 * C))",
  },
  source: "belt-makers: drive design manuals, from memory",
  valid: "two pulleys that do not overlap; a little below the exact value of teeth-in-mesh",
  examples: [
    {
      given: { teeth: 20, large: 38.197, small: 12.732, centres: 100 },
      gives: { mesh: 9.15 },
      within: 6e-4,
      source: "belt-makers: own numbers",
    },
  ],
  limits: { teeth: { from: 8, whole: true }, large: { above: 0 }, small: { above: 0 }, centres: { above: 0 } },
  compute: ({ teeth, large, small, centres }) => {
    if (small > large) return { refused: "the smaller pulley is the larger one" };
    if (large + small >= 2 * centres) return { refused: "the pulleys overlap" };
    return { mesh: teeth * (0.5 - (large - small) / (6 * centres)) };
  },
});
