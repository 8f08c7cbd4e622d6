import { bounded } from "./bounded.ts";

/** Largest tightening torque that keeps the pressure under a washer within what the plastic bears for good. */
export const torqueLimit = bounded({
  name: "torque-limit",
  title: "Torque limit of a bolt on plastic",
  inputs: {
    pressure: { symbol: "p_s", unit: "MPa", meaning: "sustained pressure that the plastic bears" },
    area: { symbol: "A", unit: "mm2", meaning: "area under the washer" },
    factor: { symbol: "K", unit: "", meaning: "torque factor; 0.2 dry" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: { torque: { symbol: "T", unit: "N·m", meaning: "largest torque" } },
  formulas: { torque: "p_s * A * K * d / 1000" },
  source: "shigley: 8-8, torque factors",
  valid: "the plastic is the weakest link, as it is under a steel bolt",
  differs: [
    "practice lists of 0.4 to 0.6 N·m for M3 on plastic are 30 to 46 % of the torque of an 8.8 bolt: the pressure decides",
  ],
  examples: [
    {
      given: { pressure: 12, area: 56.48, factor: 0.2, diameter: 5 },
      gives: { torque: 0.678 },
      within: 1e-3,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { pressure: { above: 0 }, area: { above: 0 }, factor: { above: 0 }, diameter: { above: 0 } },
  compute: ({ pressure, area, factor, diameter }) => ({ torque: (pressure * area * factor * diameter) / 1000 }),
});
