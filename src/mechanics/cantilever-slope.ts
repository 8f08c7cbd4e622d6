import { bounded } from "./bounded.ts";

/** Slope of a cantilever's tip under a load at a distance from its built-in root. */
export const cantileverSlope = bounded({
  name: "cantilever-slope",
  title: "Tip slope of a cantilever, point load",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load" },
    at: { symbol: "a", unit: "mm", meaning: "distance of the load from the root" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section about the axis that bends" },
  },
  results: { slope: { symbol: "theta", unit: "deg", meaning: "slope of the beam from the load to the tip" } },
  formulas: { slope: "F * a^2 / (2 * E * I) * 180 / pi" },
  source: "shigley: Table A-9",
  valid: "built-in root, constant section, slope below 6 deg",
  examples: [
    {
      given: { force: 20, at: 200, modulus: 69000, inertia: 7000 },
      gives: { slope: 0.04745 },
      within: 1e-5,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, at: { from: 0 }, modulus: { above: 0 }, inertia: { above: 0 } },
  compute: ({ force, at, modulus, inertia }) => {
    const slope = ((force * at ** 2) / (2 * modulus * inertia)) * (180 / Math.PI);
    return slope < 6 ? { slope } : { refused: "the slope is over 6 deg, too large for this formula" };
  },
});
