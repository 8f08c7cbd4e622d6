import { bounded } from "./bounded.ts";

/** Stress at the foot of an upright tube that is pushed down and pulled aside at its top. */
export const hollowColumnStress = bounded({
  name: "hollow-column-stress",
  title: "Stress at the foot of a round column",
  inputs: {
    pull: { symbol: "F_r", unit: "N", meaning: "pull across the column" },
    lever: { symbol: "h", unit: "mm", meaning: "height of the pull above the foot" },
    axial: { symbol: "F_a", unit: "N", meaning: "thrust down the column" },
    outer: { symbol: "R", unit: "mm", meaning: "outer radius" },
    inner: { symbol: "r", unit: "mm", meaning: "inner radius" },
  },
  results: {
    modulus: { symbol: "Z", unit: "mm3", meaning: "section modulus" },
    stress: { symbol: "sigma", unit: "MPa", meaning: "largest stress" },
  },
  formulas: {
    modulus: "pi * (R^4 - r^4) / (4 * R)",
    stress: "F_r * abs(h) / Z + F_a / (pi * (R^2 - r^2))",
  },
  source: "shigley: 3-10, bending",
  valid: "round tube of even wall; compression and bending are added as if both pulled, which is the safe side",
  examples: [
    {
      given: { pull: 30, lever: 23.9, axial: 50, outer: 16.06, inner: 9.6 },
      gives: { modulus: 2837.95, stress: 0.348647 },
      within: 1e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { pull: { from: 0 }, axial: { from: 0 }, outer: { above: 0 }, inner: { from: 0 } },
  compute: ({ pull, lever, axial, outer, inner }) => {
    if (inner >= outer) return { refused: "r is not below R, so no wall is left" };
    const modulus = (Math.PI * (outer ** 4 - inner ** 4)) / (4 * outer);
    return { modulus, stress: (pull * Math.abs(lever)) / modulus + axial / (Math.PI * (outer ** 2 - inner ** 2)) };
  },
});
