import { bounded } from "./bounded.ts";

/** Shares of two parallel bars that are tied together and sag as one. */
export const tiedBars = bounded({
  name: "tied-bars",
  title: "Load on two tied bars",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "load on both" },
    first: { symbol: "I_1", unit: "mm4", meaning: "second moment of the first bar" },
    second: { symbol: "I_2", unit: "mm4", meaning: "second moment of the second bar" },
  },
  results: {
    onFirst: { symbol: "F_1", unit: "N", meaning: "load on the first bar" },
    onSecond: { symbol: "F_2", unit: "N", meaning: "load on the second bar" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of both together" },
  },
  formulas: {
    onFirst: "F * I_1 / (I_1 + I_2)",
    onSecond: "F - F_1",
    inertia: "I_1 + I_2",
  },
  source: "statics",
  valid: "bars of one material and length, tied so that they sag alike but do not shear against each other",
  examples: [
    {
      given: { force: 30, first: 7000, second: 7000 },
      gives: { onFirst: 15, onSecond: 15, inertia: 14000 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, first: { above: 0 }, second: { above: 0 } },
  compute: ({ force, first, second }) => {
    const onFirst = (force * first) / (first + second);
    return { onFirst, onSecond: force - onFirst, inertia: first + second };
  },
});
