import { bounded } from "./bounded.ts";

/** Shortest and longest bolt into the blind threads of a motor's face. */
export const motorBoltWindow = bounded({
  name: "motor-bolt-window",
  title: "Bolt length into a motor face",
  inputs: {
    grip: { symbol: "grip", unit: "mm", meaning: "plate, pads and washer" },
    depth: { symbol: "t", unit: "mm", meaning: "depth of the thread in the motor's face" },
  },
  results: {
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest bolt" },
    longest: { symbol: "L_max", unit: "mm", meaning: "longest bolt" },
  },
  formulas: { shortest: "grip + 3", longest: "grip + t - 0.5" },
  source: "common-practice",
  valid: "M3 blind threads at least 3.5 mm deep; a shallower one is refused",
  examples: [
    {
      given: { grip: 6.9, depth: 4.5 },
      gives: { shortest: 9.9, longest: 10.9 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { grip: { from: 0 }, depth: { from: 3.5 } },
  compute: ({ grip, depth }) => ({ shortest: grip + 3, longest: grip + depth - 0.5 }),
});
