import { bounded } from "./bounded.ts";

/** Bending stress in a bolt that carries a wheel or an idler at a distance from its plate. */
export const axleBending = bounded({
  name: "axle-bending",
  title: "Bending stress of an axle bolt",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "force across the bolt" },
    arm: { symbol: "a", unit: "mm", meaning: "distance of the force from the plate" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
    pitch: { symbol: "p", unit: "mm", meaning: "thread pitch" },
  },
  results: {
    core: { symbol: "d3", unit: "mm", meaning: "core diameter of the thread" },
    stress: { symbol: "sigma", unit: "MPa", meaning: "bending stress" },
  },
  formulas: { core: "d - 1.2269 * p", stress: "32 * F * a / (pi * d3^3)" },
  source: "shigley: 3-10, bending of a round",
  valid: "bolt held at one end with its thread at the plate; without thread the stress is lower",
  examples: [
    {
      given: { force: 64.83, arm: 12.5, diameter: 5, pitch: 0.8 },
      gives: { core: 4.018, stress: 127.2 },
      within: 5e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, arm: { from: 0 }, diameter: { above: 0 }, pitch: { above: 0 } },
  compute: ({ force, arm, diameter, pitch }) => {
    const core = diameter - 1.2269 * pitch;
    if (core <= 0) return { refused: "the pitch leaves the bolt no core" };
    return { core, stress: (32 * force * arm) / (Math.PI * core ** 3) };
  },
});
