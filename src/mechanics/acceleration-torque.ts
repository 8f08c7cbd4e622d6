import { bounded } from "./bounded.ts";

/** Motor torque that speeds up the turning parts and the stage, on top of the torque that lifts. */
export const accelerationTorque = bounded({
  name: "acceleration-torque",
  title: "Motor torque of acceleration",
  inputs: {
    acceleration: { symbol: "a", unit: "mm/s2", meaning: "acceleration of the stage" },
    ratio: { symbol: "i", unit: "", meaning: "motor turns per screw turn" },
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screws" },
    inertia: { symbol: "J", unit: "kg·mm2", meaning: "moment of inertia of all turning parts, at the motor" },
    mass: { symbol: "m", unit: "kg", meaning: "mass of the stage" },
    efficiency: { symbol: "e", unit: "", meaning: "efficiency of the screws when raising" },
  },
  results: {
    turning: { symbol: "T_J", unit: "N·m", meaning: "for the turning parts" },
    stage: { symbol: "T_s", unit: "N·m", meaning: "for the stage" },
    torque: { symbol: "T_a", unit: "N·m", meaning: "together" },
  },
  formulas: {
    turning: "J * 2 * pi * a * i / l / 10^6",
    stage: "m * a * l / (2 * pi * i * e) / 10^6",
    torque: "T_J + T_s",
  },
  source: "statics",
  valid: "upward start, no belt loss; screws count in J by their inertia over the square of the ratio",
  examples: [
    {
      given: { acceleration: 100, ratio: 2, lead: 8, inertia: 10, mass: 3, efficiency: 0.661 },
      gives: { turning: 0.001571, stage: 0.0002889, torque: 0.00186 },
      within: 3e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    acceleration: { from: 0 },
    ratio: { above: 0 },
    lead: { above: 0 },
    inertia: { from: 0 },
    mass: { from: 0 },
    efficiency: { above: 0, to: 1 },
  },
  compute: ({ acceleration, ratio, lead, inertia, mass, efficiency }) => {
    const turning = (inertia * 2 * Math.PI * acceleration * ratio) / lead / 1e6;
    const stage = (mass * acceleration * lead) / (2 * Math.PI * ratio * efficiency) / 1e6;
    return { turning, stage, torque: turning + stage };
  },
});
