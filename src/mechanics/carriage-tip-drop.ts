import { bounded } from "./bounded.ts";

/** Drop of an arm's tip when its carriage turns because the wheel rows give way. */
export const carriageTipDrop = bounded({
  name: "carriage-tip-drop",
  title: "Tip drop by wheel compliance",
  inputs: {
    upper: { symbol: "delta_1", unit: "mm", meaning: "give of the upper row" },
    lower: { symbol: "delta_2", unit: "mm", meaning: "give of the lower row, the other way" },
    spacing: { symbol: "h", unit: "mm", meaning: "distance of the rows" },
    length: { symbol: "L", unit: "mm", meaning: "length of the arm" },
  },
  results: {
    turn: { symbol: "phi", unit: "deg", meaning: "turn of the carriage" },
    drop: { symbol: "delta", unit: "mm", meaning: "drop of the tip" },
  },
  formulas: { turn: "(delta_1 + delta_2) / h * 180 / pi", drop: "(delta_1 + delta_2) / h * L" },
  source: "geometry",
  valid: "turn below 3 deg; beyond it refuses",
  examples: [
    {
      given: { upper: 0.05, lower: 0.05, spacing: 100, length: 200 },
      gives: { turn: 0.0573, drop: 0.2 },
      within: 1e-3,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { upper: { from: 0 }, lower: { from: 0 }, spacing: { above: 0 }, length: { above: 0 } },
  compute: ({ upper, lower, spacing, length }) => {
    const ratio = (upper + lower) / spacing;
    const turn = (ratio * 180) / Math.PI;
    return turn < 3 ? { turn, drop: ratio * length } : { refused: "the carriage turns by over 3 deg" };
  },
});
