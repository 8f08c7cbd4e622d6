import { bounded } from "./bounded.ts";

/** Tension on one row of bolts of a bracket that tips about its heel; rows share in proportion to their distance. */
export const rowTension = bounded({
  name: "row-tension",
  title: "Tension on a row of bolts",
  inputs: {
    moment: { symbol: "M_h", unit: "N·mm", meaning: "moment about the heel" },
    distance: { symbol: "l", unit: "mm", meaning: "distance of this row from the heel" },
    squares: { symbol: "S_ll", unit: "mm2", meaning: "sum of the squared distances of all rows" },
    bolts: { symbol: "n", unit: "", meaning: "bolts in the row" },
  },
  results: {
    tension: { symbol: "T_row", unit: "N", meaning: "tension of the row" },
    each: { symbol: "T_bolt", unit: "N", meaning: "tension of one bolt" },
  },
  formulas: { tension: "M_h * l / S_ll", each: "T_row / n" },
  source: "statics",
  valid: "stiff bracket that turns about its lower edge, bolt clamp left out",
  examples: [
    {
      given: { moment: 2167, distance: 9.9, squares: 98.01, bolts: 2 },
      gives: { tension: 218.9, each: 109.4 },
      within: 5e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    moment: { from: 0 },
    distance: { above: 0 },
    squares: { above: 0 },
    bolts: { from: 1, whole: true },
  },
  compute: ({ moment, distance, squares, bolts }) => {
    if (squares < distance ** 2 * (1 - 1e-9))
      return { refused: "S_ll is below l squared, so this row is missing in it" };
    const tension = (moment * distance) / squares;
    return { tension, each: tension / bolts };
  },
});
