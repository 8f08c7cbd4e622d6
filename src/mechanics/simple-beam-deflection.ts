import { bounded } from "./bounded.ts";

/** Sag at the middle of a beam on two supports under a load at its middle. */
export const simpleBeamDeflection = bounded({
  name: "simple-beam-deflection",
  title: "Sag of a beam on two supports, middle load",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load at the middle" },
    length: { symbol: "L", unit: "mm", meaning: "distance of the supports" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: { sag: { symbol: "delta", unit: "mm", meaning: "sag at the middle" } },
  formulas: { sag: "F * L^3 / (48 * E * I)" },
  source: "shigley: Table A-9",
  valid: "ends free to turn, constant section, sag below a tenth of the length, length at least 8 times the depth",
  examples: [
    {
      given: { force: 222.4, length: 762, modulus: 70326.5, inertia: 138800 },
      gives: { sag: 0.21 },
      within: 0.024,
      source: "profile-makers: beam page, 40x40 heavy profile",
    },
    {
      given: { force: 222.411, length: 762, modulus: 70326.5, inertia: 105806 },
      gives: { sag: 0.279 },
      within: 0.046,
      source: "profile-makers: beam page, 1.5 in profile, 0.011 in",
    },
  ],
  limits: { force: { from: 0 }, length: { above: 0 }, modulus: { above: 0 }, inertia: { above: 0 } },
  compute: ({ force, length, modulus, inertia }) => {
    const sag = (force * length ** 3) / (48 * modulus * inertia);
    if (!(sag < length / 10)) return { refused: "the sag is over a tenth of the length, too large for this formula" };
    return { sag };
  },
});
