import { bounded } from "./bounded.ts";

/**
 * Preload of the one eccentric wheel that stands opposite two fixed ones: each fixed wheel gets half of it, so it must
 * be four times that of a carriage with a pair in each row.
 */
export const threeWheelPreload = bounded({
  name: "three-wheel-preload",
  title: "Wheel preload, 3 wheels",
  inputs: {
    radial: { symbol: "F_r", unit: "N", meaning: "row force across the wheels" },
    axial: { symbol: "F_x", unit: "N", meaning: "row force along the axles" },
  },
  results: {
    least: { symbol: "P_min", unit: "N", meaning: "least preload of the eccentric wheel" },
    preload: { symbol: "P", unit: "N", meaning: "preload to set" },
  },
  formulas: { least: "2 * (F_r + F_x)", preload: "max(1.25 * P_min, 10)" },
  source: "statics",
  valid: "rigid plate and bar, linear contact, V flanks at 45 deg; the margin 1.25 and the 10 N are common practice",
  examples: [
    {
      given: { radial: 100, axial: 0 },
      gives: { least: 200, preload: 250 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { radial: { from: 0 }, axial: { from: 0 } },
  compute: ({ radial, axial }) => {
    const least = 2 * (radial + axial);
    return { least, preload: Math.max(1.25 * least, 10) };
  },
});
