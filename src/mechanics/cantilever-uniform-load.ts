import { bounded } from "./bounded.ts";

/** Sag and slope of a cantilever's tip under a load spread evenly over its length. */
export const cantileverUniformLoad = bounded({
  name: "cantilever-uniform-load",
  title: "Tip sag and slope of a cantilever, even load",
  inputs: {
    load: { symbol: "w", unit: "N/mm", meaning: "load per length" },
    length: { symbol: "L", unit: "mm", meaning: "length of the beam" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: {
    sag: { symbol: "delta", unit: "mm", meaning: "sag of the tip" },
    slope: { symbol: "theta", unit: "deg", meaning: "slope of the tip" },
  },
  formulas: { sag: "w * L^4 / (8 * E * I)", slope: "w * L^3 / (6 * E * I) * 180 / pi" },
  source: "shigley: Table A-9",
  valid: "built-in root, constant section, sag below a tenth of the length, length at least 8 times the depth",
  examples: [
    {
      given: { load: 0.1, length: 200, modulus: 69000, inertia: 7000 },
      gives: { sag: 0.041408, slope: 0.0158166 },
      within: 1e-5,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { load: { from: 0 }, length: { above: 0 }, modulus: { above: 0 }, inertia: { above: 0 } },
  compute: ({ load, length, modulus, inertia }) => {
    const sag = (load * length ** 4) / (8 * modulus * inertia);
    const slope = ((load * length ** 3) / (6 * modulus * inertia)) * (180 / Math.PI);
    if (!(sag < length / 10)) return { refused: "the sag is over a tenth of the length, too large for this formula" };
    return { sag, slope };
  },
});
