import { bounded } from "./bounded.ts";

/** Sag of a cantilever's tip under a load at a distance from its built-in root. */
export const cantileverDeflection = bounded({
  name: "cantilever-deflection",
  title: "Tip sag of a cantilever, point load",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load" },
    at: { symbol: "a", unit: "mm", meaning: "distance of the load from the root" },
    length: { symbol: "L", unit: "mm", meaning: "length of the beam" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: { sag: { symbol: "delta", unit: "mm", meaning: "sag of the tip" } },
  formulas: { sag: "F * a^2 * (3 * L - a) / (6 * E * I)" },
  source: "shigley: Table A-9",
  valid: "built-in root, constant section, sag below a tenth of the length, length at least 8 times the depth",
  examples: [
    {
      given: { force: 20, at: 200, length: 200, modulus: 69000, inertia: 7000 },
      gives: { sag: 0.11 },
      within: 4e-3,
      source: "roark: own arithmetic",
    },
    {
      given: { force: 30, at: 40, length: 40, modulus: 2000, inertia: 540 },
      gives: { sag: 0.593 },
      within: 1e-3,
      source: "roark: own arithmetic",
    },
  ],
  limits: {
    force: { from: 0 },
    at: { from: 0 },
    length: { above: 0 },
    modulus: { above: 0 },
    inertia: { above: 0 },
  },
  compute: ({ force, at, length, modulus, inertia }) => {
    if (at > length) return { refused: "the load lies beyond the end of the beam" };
    const sag = (force * at ** 2 * (3 * length - at)) / (6 * modulus * inertia);
    return sag < length / 10
      ? { sag }
      : { refused: "the sag is over a tenth of the length, too large for this formula" };
  },
});
