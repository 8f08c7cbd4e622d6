import { bounded } from "./bounded.ts";

/** Largest and smallest wheel force of a carriage with two fixed wheels and one eccentric wheel opposite. */
export const threeWheelForces = bounded({
  name: "three-wheel-forces",
  title: "Wheel forces, 3 wheels",
  inputs: {
    preload: { symbol: "P", unit: "N", meaning: "preload of the eccentric wheel" },
    radial: { symbol: "F_r", unit: "N", meaning: "row force across the wheels" },
    axial: { symbol: "F_x", unit: "N", meaning: "row force along the axles" },
  },
  results: {
    largest: { symbol: "F_eq", unit: "N", meaning: "largest equivalent wheel force, on the eccentric wheel" },
    smallest: { symbol: "F_least", unit: "N", meaning: "smallest force on a fixed wheel" },
    flank: { symbol: "F_flank", unit: "N", meaning: "largest force on one V flank" },
  },
  formulas: {
    largest: "P",
    smallest: "P / 2 - F_r - F_x",
    flank: "F_eq * sind(45)",
  },
  source: "statics",
  valid: "while every wheel keeps contact; a preload below 2 (F_r + F_x) is refused, since then a wheel lifts off",
  examples: [
    {
      given: { preload: 72.03, radial: 25, axial: 3.8125 },
      gives: { largest: 72.03, smallest: 7.2 },
      within: 1e-3,
      source: "statics: own arithmetic",
    },
  ],
  limits: { preload: { from: 0 }, radial: { from: 0 }, axial: { from: 0 } },
  compute: ({ preload, radial, axial }) => {
    const swing = radial + axial;
    if (preload / 2 < swing) return { refused: "P is below 2 (F_r + F_x), so a wheel lifts off" };
    return { largest: preload, smallest: preload / 2 - swing, flank: preload * Math.SQRT1_2 };
  },
});
