import { bounded } from "./bounded.ts";

/** Angle by which a rectangular frame is out of square, from its two diagonals. */
export const frameSquareness = bounded({
  name: "frame-squareness",
  title: "Squareness from diagonals",
  inputs: {
    length: { symbol: "a", unit: "mm", meaning: "length of the frame" },
    width: { symbol: "b", unit: "mm", meaning: "width of the frame" },
    first: { symbol: "d_1", unit: "mm", meaning: "one diagonal" },
    second: { symbol: "d_2", unit: "mm", meaning: "the other diagonal" },
  },
  results: { angle: { symbol: "phi", unit: "deg", meaning: "angle out of square" } },
  formulas: { angle: "(d_1 - d_2) * (d_1 + d_2) / (4 * a * b) * 180 / pi" },
  source: "geometry",
  valid: "parallelogram nearly square; diagonals that differ by over 2 % are refused as a reading error",
  examples: [
    {
      given: { length: 500, width: 400, first: 641.3, second: 639.3 },
      gives: { angle: 0.183432 },
      within: 1e-4,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { length: { above: 0 }, width: { above: 0 }, first: { above: 0 }, second: { above: 0 } },
  compute: ({ length, width, first, second }) => {
    if (Math.abs(first - second) > 0.02 * Math.max(first, second)) {
      return { refused: "the diagonals differ by over 2 %: measure again" };
    }
    return { angle: ((((first - second) * (first + second)) / (4 * length * width)) * 180) / Math.PI };
  },
});
