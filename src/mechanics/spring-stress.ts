import { bounded, brief } from "./bounded.ts";

/** Shear stress at the inside of the coil, where the curvature of the wire raises it. */
export const springStress = bounded({
  name: "spring-stress",
  title: "Shear stress of a compression spring",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "spring force" },
    wire: { symbol: "d", unit: "mm", meaning: "wire diameter" },
    meanDiameter: { symbol: "D_m", unit: "mm", meaning: "mean coil diameter" },
  },
  results: {
    index: { symbol: "C", unit: "", meaning: "spring index" },
    curvature: { symbol: "K_B", unit: "", meaning: "curvature factor" },
    stress: { symbol: "tau", unit: "MPa", meaning: "shear stress" },
  },
  formulas: {
    index: "D_m / d",
    curvature: "(4 * C + 2) / (4 * C - 3)",
    stress: "K_B * 8 * F * D_m / (pi * d^3)",
  },
  source: "shigley: 10-1 and 10-2",
  valid: "round wire, index 3 to 16; outside it refuses",
  differs: ["Wahl's factor is about 1 % higher than the one used, which EN 13906-1 prints in another form"],
  examples: [
    {
      given: { force: 29.7012, wire: 1, meanDiameter: 7 },
      gives: { index: 7, curvature: 1.2, stress: 635 },
      within: 1e-3,
      source: "en-13906-1: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, wire: { above: 0 } },
  compute: ({ force, wire, meanDiameter }) => {
    const index = meanDiameter / wire;
    if (!(index >= 3 && index <= 16)) return { refused: `the spring index ${brief(index)} is outside 3 to 16` };
    const curvature = (4 * index + 2) / (4 * index - 3);
    return { index, curvature, stress: (curvature * 8 * force * meanDiameter) / (Math.PI * wire ** 3) };
  },
});
