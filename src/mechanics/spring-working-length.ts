import { bounded } from "./bounded.ts";

/** Shortest length to which a spring should be pressed, with the clearance between coils that EN 13906-1 asks for. */
export const springWorkingLength = bounded({
  name: "spring-working-length",
  title: "Shortest working length of a compression spring",
  inputs: {
    solidLength: { symbol: "L_c", unit: "mm", meaning: "solid length" },
    activeCoils: { symbol: "n", unit: "", meaning: "active coils" },
    meanDiameter: { symbol: "D", unit: "mm", meaning: "mean coil diameter" },
    wire: { symbol: "d", unit: "mm", meaning: "wire diameter" },
  },
  results: {
    clearance: { symbol: "S_a", unit: "mm", meaning: "sum of the gaps between the coils" },
    shortest: { symbol: "L_n", unit: "mm", meaning: "shortest working length" },
  },
  formulas: { clearance: "n * (0.0015 * D^2 / d + 0.1 * d)", shortest: "L_c + S_a" },
  source: "en-13906-1: from memory",
  valid: "still load, cold-formed wire",
  examples: [
    {
      given: { solidLength: 8, activeCoils: 6, meanDiameter: 7, wire: 1 },
      gives: { clearance: 1.04, shortest: 9.04 },
      within: 1e-3,
      source: "en-13906-1: own arithmetic",
    },
  ],
  limits: { solidLength: { above: 0 }, activeCoils: { above: 0 }, meanDiameter: { above: 0 }, wire: { above: 0 } },
  compute: ({ solidLength, activeCoils, meanDiameter, wire }) => {
    const clearance = activeCoils * ((0.0015 * meanDiameter ** 2) / wire + 0.1 * wire);
    return { clearance, shortest: solidLength + clearance };
  },
});
