import { bounded } from "./bounded.ts";

/** Pull in a belt that passes a torque on, the difference between its tight and its slack span. */
export const beltPull = bounded({
  name: "belt-pull",
  title: "Belt pull from torque",
  inputs: {
    torque: { symbol: "T", unit: "N·m", meaning: "torque on the pulley" },
    teeth: { symbol: "z", unit: "", meaning: "teeth of the pulley" },
    pitch: { symbol: "p", unit: "mm", meaning: "belt pitch" },
  },
  results: { pull: { symbol: "F", unit: "N", meaning: "difference of the span tensions" } },
  formulas: { pull: "2000 * pi * T / (z * p)" },
  source: "statics",
  valid: "steady torque, no slip",
  examples: [
    {
      given: { torque: 0.4, teeth: 20, pitch: 2 },
      gives: { pull: 62.8 },
      within: 8e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { torque: { from: 0 }, teeth: { from: 8, whole: true }, pitch: { above: 0 } },
  compute: ({ torque, teeth, pitch }) => ({ pull: (2000 * Math.PI * torque) / (teeth * pitch) }),
});
