import { bounded } from "./bounded.ts";

/** Share of a clamped joint's friction that a moment uses up; above 1 the joint turns. */
export const frictionUse = bounded({
  name: "friction-use",
  title: "Use of a clamped joint's friction",
  inputs: {
    moment: { symbol: "M", unit: "N·mm", meaning: "moment that tries to turn the joint" },
    friction: { symbol: "mu", unit: "", meaning: "friction between the faces; 0.2" },
    clamp: { symbol: "F", unit: "N", meaning: "clamp force of one bolt" },
    spacing: { symbol: "s_b", unit: "mm", meaning: "distance of the two bolts" },
    faces: { symbol: "n", unit: "", meaning: "pairs of bolts that hold" },
  },
  results: { use: { symbol: "u", unit: "", meaning: "moment over holding moment" } },
  formulas: { use: "M / (mu * F * s_b * n)" },
  source: "statics",
  valid: "two bolts a pair, each holding at its own place; the friction 0.2 is common practice",
  examples: [
    {
      given: { moment: 1395, friction: 0.2, clamp: 600, spacing: 16, faces: 2 },
      gives: { use: 0.36 },
      within: 0.01,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    moment: { from: 0 },
    friction: { above: 0, to: 1 },
    clamp: { above: 0 },
    spacing: { above: 0 },
    faces: { from: 1, whole: true },
  },
  compute: ({ moment, friction, clamp, spacing, faces }) => ({ use: moment / (friction * clamp * spacing * faces) }),
});
