import { bounded } from "./bounded.ts";

/** Share of the load on the first engaged thread. */
const FIRST = 0.38;

/** Stresses in the body of a loaded power screw and in the first of its engaged threads. */
export const screwThreadStress = bounded({
  name: "screw-thread-stress",
  title: "Stresses in a power screw",
  inputs: {
    load: { symbol: "F", unit: "N", meaning: "load on the screw" },
    torque: { symbol: "T", unit: "N·mm", meaning: "torque that turns it, collar included" },
    root: { symbol: "d_r", unit: "mm", meaning: "root diameter" },
    mean: { symbol: "d_m", unit: "mm", meaning: "pitch diameter" },
    pitch: { symbol: "p", unit: "mm", meaning: "pitch" },
  },
  results: {
    shear: { symbol: "tau", unit: "MPa", meaning: "shear by torsion in the body" },
    axial: { symbol: "sigma", unit: "MPa", meaning: "compression or tension of the body" },
    bearing: { symbol: "sigma_B", unit: "MPa", meaning: "pressure on the first thread" },
    bending: { symbol: "sigma_b", unit: "MPa", meaning: "bending at the root of the first thread" },
  },
  formulas: {
    shear: "16 * T / (pi * d_r^3)",
    axial: "4 * F / (pi * d_r^2)",
    bearing: "2 * 0.38 * F / (pi * d_m * p)",
    bending: "6 * 0.38 * F / (pi * d_r * p)",
  },
  source: "shigley: 8-7 to 8-12",
  valid:
    "square or trapezoidal thread of half the pitch in depth; the first of several engaged threads carries 0.38 of " +
    "the load. A root above the pitch diameter is refused",
  examples: [
    {
      given: { load: 6400, torque: 26180, root: 28, mean: 30, pitch: 4 },
      gives: { shear: 6.07, axial: 10.39, bearing: 12.9, bending: 41.5 },
      within: 1.2e-3,
      source: "shigley: Example 8-1, from memory",
    },
  ],
  limits: { load: { from: 0 }, torque: { from: 0 }, root: { above: 0 }, mean: { above: 0 }, pitch: { above: 0 } },
  compute: ({ load, torque, root, mean, pitch }) => {
    if (root >= mean) return { refused: "the root is as wide as the pitch diameter" };
    return {
      shear: (16 * torque) / (Math.PI * root ** 3),
      axial: (4 * load) / (Math.PI * root ** 2),
      bearing: (2 * FIRST * load) / (Math.PI * mean * pitch),
      bending: (6 * FIRST * load) / (Math.PI * root * pitch),
    };
  },
});
