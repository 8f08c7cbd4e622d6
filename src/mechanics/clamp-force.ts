import { bounded } from "./bounded.ts";

/** Factor between torque and bolt force for a dry, plain bolt (key `shigley`: 8-8, table of torque factors). */
export const TORQUE_FACTOR = 0.2;

/** Clamp force of a bolt tightened to a torque. The scatter of the torque factor is about a quarter either way. */
export const clampForce = bounded({
  name: "clamp-force",
  title: "Clamp force of a bolt",
  inputs: {
    torque: { symbol: "T", unit: "N·m", meaning: "tightening torque" },
    factor: { symbol: "K", unit: "", meaning: "torque factor; 0.2 dry" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: { force: { symbol: "F", unit: "N", meaning: "clamp force" } },
  formulas: { force: "1000 * T / (K * d)" },
  source: "shigley: 8-8, torque factors",
  valid: "a bolt when it has just been tightened; plastic gives way and loses 30 to 60 % of it in weeks",
  examples: [
    {
      given: { torque: 50, factor: 0.2, diameter: 10 },
      gives: { force: 25000 },
      within: 1e-9,
      source: "shigley: M10 at 50 N·m, engineering reference page",
    },
    {
      given: { torque: 423.7, factor: 0.2, diameter: 19.05 },
      gives: { force: 111206 },
      within: 1e-4,
      source: "shigley: Example 8-3, 3750 lbf in for 25 kip, from memory",
    },
  ],
  limits: { torque: { from: 0 }, factor: { above: 0 }, diameter: { above: 0 } },
  compute: ({ torque, factor, diameter }) => ({ force: (1000 * torque) / (factor * diameter) }),
});
