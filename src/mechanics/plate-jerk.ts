import { bounded } from "./bounded.ts";
import { GRAVITY } from "./centre-of-mass.ts";

/** Sideways force that the springs of a plate must hold by friction: the drag of a nozzle or the jerk of the plate. */
export const plateJerk = bounded({
  name: "plate-jerk",
  title: "Sideways force on a plate",
  inputs: {
    drag: { symbol: "F_n", unit: "N", meaning: "drag of the nozzle; 5 unless known" },
    mass: { symbol: "m", unit: "kg", meaning: "mass of the plate and what is on it" },
    jerk: { symbol: "j", unit: "", meaning: "sideways acceleration as a share of gravity; 0.5 unless known" },
  },
  results: {
    force: { symbol: "F_q", unit: "N", meaning: "sideways force, the larger of the two" },
  },
  formulas: {
    force: "max(F_n, m * 9.80665 * j)",
  },
  source: "statics",
  valid: "drag and jerk do not come together; 5 N and half of gravity are common practice",
  examples: [
    {
      given: { drag: 5, mass: 3.584, jerk: 0.5 },
      gives: { force: 17.57 },
      within: 3e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { drag: { from: 0 }, mass: { above: 0 }, jerk: { from: 0 } },
  compute: ({ drag, mass, jerk }) => ({ force: Math.max(drag, mass * GRAVITY * jerk) }),
});
