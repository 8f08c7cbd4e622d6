import { bounded } from "./bounded.ts";

/** Sag at the middle of a beam on two supports under a load spread evenly between them. */
export const simpleBeamUniformLoad = bounded({
  name: "simple-beam-uniform-load",
  title: "Sag of a beam on two supports, even load",
  inputs: {
    load: { symbol: "w", unit: "N/mm", meaning: "load per length" },
    length: { symbol: "L", unit: "mm", meaning: "distance of the supports" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: { sag: { symbol: "delta", unit: "mm", meaning: "sag at the middle" } },
  formulas: { sag: "5 * w * L^4 / (384 * E * I)" },
  source: "shigley: Table A-9",
  valid: "ends free to turn, constant section, sag below a tenth of the length, length at least 8 times the depth",
  examples: [
    {
      given: { load: 0.004905, length: 500, modulus: 69000, inertia: 7000 },
      gives: { sag: 0.0083 },
      within: 6e-3,
      source: "roark: own arithmetic",
    },
  ],
  limits: { load: { from: 0 }, length: { above: 0 }, modulus: { above: 0 }, inertia: { above: 0 } },
  compute: ({ load, length, modulus, inertia }) => {
    const sag = (5 * load * length ** 4) / (384 * modulus * inertia);
    if (!(sag < length / 10)) return { refused: "the sag is over a tenth of the length, too large for this formula" };
    return { sag };
  },
});
