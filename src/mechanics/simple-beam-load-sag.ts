import { bounded } from "./bounded.ts";

/** Sag of a beam on two supports where a load stands on it, anywhere between them. */
export const simpleBeamLoadSag = bounded({
  name: "simple-beam-load-sag",
  title: "Sag of a beam on two supports, under a load anywhere",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load" },
    at: { symbol: "a", unit: "mm", meaning: "distance of the load from one support" },
    length: { symbol: "L", unit: "mm", meaning: "distance of the supports" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: { sag: { symbol: "delta", unit: "mm", meaning: "sag under the load" } },
  formulas: { sag: "F * a^2 * (L - a)^2 / (3 * E * I * L)" },
  source: "shigley: Table A-9",
  valid: "ends free to turn, constant section, sag below a tenth of the length, length at least 8 times the depth",
  examples: [
    {
      given: { force: 222.4, at: 381, length: 762, modulus: 70326.5, inertia: 138800 },
      gives: { sag: 0.21 },
      within: 0.024,
      source: "profile-makers: beam page, 40x40 heavy profile",
    },
    {
      given: { force: 30, at: 100, length: 400, modulus: 69000, inertia: 7000 },
      gives: { sag: 0.0466 },
      within: 1e-3,
      source: "shigley: own arithmetic",
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
    if (at > length) return { refused: "the load lies beyond the second support" };
    const sag = (force * at ** 2 * (length - at) ** 2) / (3 * modulus * inertia * length);
    return sag < length / 10
      ? { sag }
      : { refused: "the sag is over a tenth of the length, too large for this formula" };
  },
});
