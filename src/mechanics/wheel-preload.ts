import { bounded } from "./bounded.ts";

/**
 * Preload that keeps both flanks of every wheel on the bar when each row has a fixed and an eccentric wheel (4, 6 or 8
 * wheels): the least one, and the one to set.
 */
export const wheelPreload = bounded({
  name: "wheel-preload",
  title: "Wheel preload, 4, 6 or 8 wheels",
  inputs: {
    radial: { symbol: "F_r", unit: "N", meaning: "row force across the wheels" },
    axial: { symbol: "F_x", unit: "N", meaning: "row force along the axles" },
  },
  results: {
    least: { symbol: "P_min", unit: "N", meaning: "least preload of a wheel" },
    preload: { symbol: "P", unit: "N", meaning: "preload to set" },
  },
  formulas: { least: "(F_r + F_x) / 2", preload: "max(1.25 * P_min, 10)" },
  source: "statics",
  valid: "rigid plate and bar, linear contact, V flanks at 45 deg; the margin 1.25 and the 10 N are common practice",
  examples: [
    {
      given: { radial: 100, axial: 0 },
      gives: { least: 50, preload: 62.5 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { radial: { from: 0 }, axial: { from: 0 } },
  compute: ({ radial, axial }) => {
    const least = (radial + axial) / 2;
    return { least, preload: Math.max(1.25 * least, 10) };
  },
});
