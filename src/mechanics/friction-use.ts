import { bounded } from "./bounded.ts";

/** Share of a clamped joint's friction that moment and direct forces use up on its worst bolt; above 1 it slides. */
export const frictionUse = bounded({
  name: "friction-use",
  title: "Use of a clamped joint's friction",
  inputs: {
    moment: { symbol: "M", unit: "N·mm", meaning: "moment that tries to turn the joint" },
    along: { symbol: "F_z", unit: "N", meaning: "force along the line of each pair of bolts" },
    across: { symbol: "F_y", unit: "N", meaning: "force across that line, the way the moment pulls the bolts" },
    friction: { symbol: "mu", unit: "", meaning: "friction between the faces; 0.2" },
    clamp: { symbol: "F", unit: "N", meaning: "clamp force of one bolt" },
    spacing: { symbol: "s_b", unit: "mm", meaning: "distance of the two bolts" },
    faces: { symbol: "n", unit: "", meaning: "pairs of bolts that hold" },
  },
  results: {
    force: { symbol: "F_s", unit: "N", meaning: "force that tries to slide the worst bolt's seat" },
    use: { symbol: "u", unit: "", meaning: "that force over the friction of one bolt" },
  },
  formulas: {
    force: "sqrt((M / (s_b * n) + F_y / (2 * n))^2 + (F_z / (2 * n))^2)",
    use: "F_s / (mu * F)",
  },
  source: "statics",
  valid: "two bolts a pair, each holding at its own place and an equal share; the friction 0.2 is common practice",
  examples: [
    {
      given: { moment: 1395, along: 0, across: 0, friction: 0.2, clamp: 600, spacing: 16, faces: 2 },
      gives: { use: 0.36 },
      within: 0.01,
      source: "statics: own arithmetic",
    },
    {
      given: { moment: 5296, along: 150, across: 0, friction: 0.2, clamp: 833.5, spacing: 16, faces: 2 },
      gives: { force: 169.7, use: 1.02 },
      within: 0.002,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    moment: { from: 0 },
    along: { from: 0 },
    across: { from: 0 },
    friction: { above: 0, to: 1 },
    clamp: { above: 0 },
    spacing: { above: 0 },
    faces: { from: 1, whole: true },
  },
  compute: ({ moment, along, across, friction, clamp, spacing, faces }) => {
    const force = Math.hypot(moment / (spacing * faces) + across / (2 * faces), along / (2 * faces));
    return { force, use: force / (friction * clamp) };
  },
});
