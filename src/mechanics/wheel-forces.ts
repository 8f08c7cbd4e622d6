import { bounded } from "./bounded.ts";

/** Largest and smallest wheel force when each row has a fixed and an eccentric wheel (4, 6 or 8 wheels). */
export const wheelForces = bounded({
  name: "wheel-forces",
  title: "Wheel forces, 4, 6 or 8 wheels",
  inputs: {
    preload: { symbol: "P", unit: "N", meaning: "preload of a wheel" },
    radial: { symbol: "F_r", unit: "N", meaning: "row force across the wheels" },
    axial: { symbol: "F_x", unit: "N", meaning: "row force along the axles" },
  },
  results: {
    largest: { symbol: "F_eq", unit: "N", meaning: "largest equivalent wheel force" },
    smallest: { symbol: "F_least", unit: "N", meaning: "smallest wheel force" },
    flank: { symbol: "F_flank", unit: "N", meaning: "largest force on one V flank" },
  },
  formulas: {
    largest: "P + (F_r + F_x) / 2",
    smallest: "P - (F_r + F_x) / 2",
    flank: "F_eq * sind(45)",
  },
  source: "statics",
  valid: "while every wheel keeps contact; a preload below (F_r + F_x) / 2 is refused, since then wheels lift off",
  examples: [
    {
      given: { preload: 62.5, radial: 100, axial: 0 },
      gives: { largest: 112.5, smallest: 12.5 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { preload: { from: 0 }, radial: { from: 0 }, axial: { from: 0 } },
  compute: ({ preload, radial, axial }) => {
    const swing = (radial + axial) / 2;
    if (preload < swing) return { refused: "P is below (F_r + F_x) / 2, so a wheel lifts off" };
    return { largest: preload + swing, smallest: preload - swing, flank: (preload + swing) * Math.SQRT1_2 };
  },
});
