import { bounded } from "./bounded.ts";

/** Force with which a stalled motor drives a stage into an obstacle; on all screws together, or the whole on one. */
export const stallForce = bounded({
  name: "stall-force",
  title: "Force of a stalled motor on the stage",
  inputs: {
    torque: { symbol: "T", unit: "N·m", meaning: "motor torque" },
    ratio: { symbol: "i", unit: "", meaning: "motor turns per screw turn" },
    efficiency: { symbol: "e", unit: "", meaning: "efficiency of the screw" },
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screw" },
  },
  results: { force: { symbol: "F", unit: "N", meaning: "force along the screw" } },
  formulas: { force: "2000 * pi * e * i * T / l" },
  source: "shigley: 8-4, efficiency of a power screw",
  valid: "belt losses left out, which is the safe side for brackets and fingers",
  examples: [
    {
      given: { torque: 0.4, ratio: 1, efficiency: 0.6612, lead: 8 },
      gives: { force: 207.7 },
      within: 3e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { torque: { from: 0 }, ratio: { above: 0 }, efficiency: { above: 0, to: 1 }, lead: { above: 0 } },
  compute: ({ torque, ratio, efficiency, lead }) => ({ force: (2000 * Math.PI * efficiency * ratio * torque) / lead }),
});
