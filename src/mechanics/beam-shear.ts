import { bounded } from "./bounded.ts";

/** Sag by shear, which adds to the sag by bending when a beam is short for its depth. */
export const beamShear = bounded({
  name: "beam-shear",
  title: "Sag of a short cantilever by shear",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load at the tip" },
    length: { symbol: "L", unit: "mm", meaning: "length" },
    factor: { symbol: "kappa", unit: "", meaning: "shear factor: 1.2 for a rectangle" },
    modulus: { symbol: "G", unit: "MPa", meaning: "shear modulus" },
    area: { symbol: "A", unit: "mm2", meaning: "area of the section" },
  },
  results: {
    sag: { symbol: "delta_s", unit: "mm", meaning: "sag of the tip by shear" },
  },
  formulas: {
    sag: "kappa * F * L / (G * A)",
  },
  source: "shigley: 4-7, transverse shear",
  valid: "to be added to the bending of a beam shorter than 8 times its depth",
  examples: [
    {
      given: { force: 30, length: 40, factor: 1.2, modulus: 740.74, area: 180 },
      gives: { sag: 0.0108 },
      within: 1e-3,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, length: { above: 0 }, factor: { from: 1 }, modulus: { above: 0 }, area: { above: 0 } },
  compute: ({ force, length, factor, modulus, area }) => ({ sag: (factor * force * length) / (modulus * area) }),
});
