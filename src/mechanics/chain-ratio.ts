import { bounded } from "./bounded.ts";

/** Ratio of two loops in a row that share a stacked pulley: the ratios multiply. */
export const chainRatio = bounded({
  name: "chain-ratio",
  title: "Ratio of two loops in a row",
  inputs: {
    first: { symbol: "z_1", unit: "", meaning: "teeth of the driving pulley of the first loop" },
    stackedIn: { symbol: "z_2", unit: "", meaning: "teeth of the stacked pulley on the first loop" },
    stackedOut: { symbol: "z_3", unit: "", meaning: "teeth of the stacked pulley on the second loop" },
    last: { symbol: "z_4", unit: "", meaning: "teeth of the driven pulley of the second loop" },
  },
  results: {
    ratio: { symbol: "i", unit: "", meaning: "turns of the first pulley for one turn of the last" },
  },
  formulas: {
    ratio: "z_2 / z_1 * z_4 / z_3",
  },
  source: "geometry",
  valid: "whole teeth, at least 10 on each pulley; no slip",
  examples: [
    {
      given: { first: 20, stackedIn: 40, stackedOut: 20, last: 40 },
      gives: { ratio: 4 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {
    first: { from: 10, whole: true },
    stackedIn: { from: 10, whole: true },
    stackedOut: { from: 10, whole: true },
    last: { from: 10, whole: true },
  },
  compute: ({ first, stackedIn, stackedOut, last }) => ({ ratio: ((stackedIn / first) * last) / stackedOut }),
});
