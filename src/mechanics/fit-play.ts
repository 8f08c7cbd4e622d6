import { bounded } from "./bounded.ts";

/** Least and most play of a hole and a shaft by their limits; negative play is interference. */
export const fitPlay = bounded({
  name: "fit-play",
  title: "Play of a fit",
  inputs: {
    holeLow: { symbol: "EI", unit: "mm", meaning: "lower deviation of the hole" },
    holeHigh: { symbol: "ES", unit: "mm", meaning: "upper deviation of the hole" },
    shaftLow: { symbol: "ei", unit: "mm", meaning: "lower deviation of the shaft" },
    shaftHigh: { symbol: "es", unit: "mm", meaning: "upper deviation of the shaft" },
  },
  results: {
    least: { symbol: "c_min", unit: "mm", meaning: "least play" },
    most: { symbol: "c_max", unit: "mm", meaning: "most play" },
  },
  formulas: {
    least: "EI - es",
    most: "ES - ei",
  },
  source: "iso-286",
  valid: "hole and shaft of one nominal size; limits the wrong way round are refused",
  examples: [
    {
      given: { holeLow: 0, holeHigh: 0.015, shaftLow: -0.014, shaftHigh: -0.005 },
      gives: { least: 0.005, most: 0.029 },
      within: 1e-9,
      source: "iso-286: 8 H7/g6",
    },
    {
      given: { holeLow: 0, holeHigh: 0.021, shaftLow: 0.022, shaftHigh: 0.035 },
      gives: { least: -0.035, most: -0.001 },
      within: 1e-9,
      source: "iso-286: 22 H7/p6",
    },
  ],
  limits: {},
  compute: ({ holeLow, holeHigh, shaftLow, shaftHigh }) =>
    holeLow > holeHigh || shaftLow > shaftHigh
      ? { refused: "a lower deviation lies above the upper one" }
      : { least: holeLow - shaftHigh, most: holeHigh - shaftLow },
});
