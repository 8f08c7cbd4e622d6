import { bounded } from "./bounded.ts";

/** Torque the motor needs to lift, and what the stage turns the motor with when the power is off. */
export const motorTorque = bounded({
  name: "motor-torque",
  title: "Motor torque of a lift",
  inputs: {
    raise: { symbol: "S_raise", unit: "N·mm", meaning: "raising torques of all screws, summed" },
    lower: { symbol: "S_lower", unit: "N·mm", meaning: "lowering torques of all screws, summed; negative runs down" },
    ratio: { symbol: "i", unit: "", meaning: "motor turns per screw turn" },
    belt: { symbol: "eta", unit: "", meaning: "efficiency of the belts: 0.95 for each loop passed" },
  },
  results: {
    lift: { symbol: "T_m", unit: "N·m", meaning: "motor torque to lift, without acceleration" },
    back: { symbol: "T_back", unit: "N·m", meaning: "torque that turns the motor when the power is off" },
  },
  formulas: { lift: "S_raise / (1000 * i * eta)", back: "max(0, -S_lower) / (1000 * i)" },
  source: "statics",
  valid: "belt losses count against lifting and are left out against running down: the safe side both times",
  examples: [
    {
      given: { raise: 288.84, lower: -103.62, ratio: 2, belt: 0.95 },
      gives: { lift: 0.152, back: 0.0518 },
      within: 3e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { raise: { from: 0 }, ratio: { above: 0 }, belt: { above: 0, to: 1 } },
  compute: ({ raise, lower, ratio, belt }) => ({
    lift: raise / (1000 * ratio * belt),
    back: Math.max(0, -lower) / (1000 * ratio),
  }),
});
