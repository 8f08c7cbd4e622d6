import { bounded, brief } from "./bounded.ts";

/** Rate of a cylindrical compression spring of round wire. Linear until the coils touch. */
export const springRate = bounded({
  name: "spring-rate",
  title: "Rate of a compression spring",
  inputs: {
    shearModulus: { symbol: "G", unit: "MPa", meaning: "shear modulus of the wire" },
    wire: { symbol: "d", unit: "mm", meaning: "wire diameter" },
    meanDiameter: { symbol: "D_m", unit: "mm", meaning: "mean coil diameter" },
    activeCoils: { symbol: "N_a", unit: "", meaning: "active coils" },
  },
  results: { rate: { symbol: "k", unit: "N/mm", meaning: "spring rate" } },
  formulas: { rate: "G * d^4 / (8 * D_m^3 * N_a)" },
  source: "shigley: 10-3",
  valid: "round wire, index 3 to 16, at least 2 active coils; outside it refuses",
  differs: [
    "shear modulus of patented and music wire: 81 500 MPa by EN 10270-1, which is used, 79 300 in older US tables",
  ],
  examples: [
    {
      given: { shearModulus: 81500, wire: 1, meanDiameter: 7, activeCoils: 6 },
      gives: { rate: 4.95 },
      within: 1e-4,
      source: "en-13906-1: own arithmetic",
    },
  ],
  limits: { shearModulus: { above: 0 }, wire: { above: 0 }, activeCoils: { from: 2 } },
  compute: ({ shearModulus, wire, meanDiameter, activeCoils }) => {
    const index = meanDiameter / wire;
    if (!(index >= 3 && index <= 16)) return { refused: `the spring index ${brief(index)} is outside 3 to 16` };
    return { rate: (shearModulus * wire ** 4) / (8 * meanDiameter ** 3 * activeCoils) };
  },
});
