import { bounded } from "./bounded.ts";

/** Torque that the friction of a plain thrust collar adds when raising and when lowering. */
export const collarTorque = bounded({
  name: "collar-torque",
  title: "Torque of a thrust collar",
  inputs: {
    load: { symbol: "F", unit: "N", meaning: "load on the screw" },
    friction: { symbol: "f_c", unit: "", meaning: "friction of the collar" },
    diameter: { symbol: "d_c", unit: "mm", meaning: "mean diameter of the collar" },
  },
  results: { torque: { symbol: "T_c", unit: "N·mm", meaning: "torque of the collar" } },
  formulas: { torque: "F * f_c * d_c / 2" },
  source: "shigley: 8-6",
  valid: "plain collar or washer; a ball bearing has next to none",
  examples: [
    {
      given: { load: 6400, friction: 0.08, diameter: 40 },
      gives: { torque: 10240 },
      within: 1e-9,
      source: "shigley: Example 8-1, from memory",
    },
  ],
  limits: { load: { from: 0 }, friction: { from: 0, below: 1 }, diameter: { above: 0 } },
  compute: ({ load, friction, diameter }) => ({ torque: (load * friction * diameter) / 2 }),
});
