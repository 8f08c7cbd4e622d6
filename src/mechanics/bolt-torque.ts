import { bounded } from "./bounded.ts";

/** Torque that brings a bolt to a share of its proof strength. For metal joints; plastic gives way long before. */
export const boltTorque = bounded({
  name: "bolt-torque",
  title: "Torque of a bolt in a metal joint",
  inputs: {
    factor: { symbol: "K", unit: "", meaning: "torque factor; 0.2 dry" },
    share: { symbol: "c", unit: "", meaning: "share of the proof strength; 0.75" },
    proof: { symbol: "S_p", unit: "MPa", meaning: "proof strength; 580 for grade 8.8" },
    area: { symbol: "A_s", unit: "mm2", meaning: "stress area" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: {
    force: { symbol: "F", unit: "N", meaning: "bolt force" },
    torque: { symbol: "T", unit: "N·m", meaning: "tightening torque" },
  },
  formulas: { force: "c * S_p * A_s", torque: "K * F * d / 1000" },
  source: "shigley: 8-8",
  valid: "steel bolt in a metal joint, share up to 0.9",
  examples: [
    {
      given: { factor: 0.2, share: 0.7, proof: 580, area: 84.3, diameter: 12 },
      gives: { force: 34200, torque: 82 },
      within: 3e-3,
      source: "shigley: M12 8.8, engineering reference page",
    },
    {
      given: { factor: 0.2, share: 0.75, proof: 580, area: 156.67, diameter: 16 },
      gives: { force: 68000, torque: 218.08 },
      within: 3e-3,
      source: "shigley: M16 8.8, engineering reference page",
    },
    {
      given: { factor: 0.2, share: 0.75, proof: 580, area: 14.2, diameter: 5 },
      gives: { torque: 6.18 },
      within: 9e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    factor: { above: 0 },
    share: { above: 0, to: 0.9 },
    proof: { above: 0 },
    area: { above: 0 },
    diameter: { above: 0 },
  },
  compute: ({ factor, share, proof, area, diameter }) => {
    const force = share * proof * area;
    return { force, torque: (factor * force * diameter) / 1000 };
  },
});
