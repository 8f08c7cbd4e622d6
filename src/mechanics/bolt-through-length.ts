import { bounded } from "./bounded.ts";

/** Least length of a bolt that goes through a stack and shows two threads beyond its nut. */
export const boltThroughLength = bounded({
  name: "bolt-through-length",
  title: "Length of a through bolt",
  inputs: {
    grip: { symbol: "grip", unit: "mm", meaning: "all that is clamped, washers included" },
    nut: { symbol: "m", unit: "mm", meaning: "nut height" },
    pitch: { symbol: "p", unit: "mm", meaning: "thread pitch" },
  },
  results: { needed: { symbol: "L_min", unit: "mm", meaning: "least bolt length" } },
  formulas: { needed: "grip + m + 2 * p" },
  source: "common-practice",
  valid: "metric coarse thread; the next stock length is taken, and what it sticks out must have room",
  examples: [
    {
      given: { grip: 39.55, nut: 4.7, pitch: 0.8 },
      gives: { needed: 45.85 },
      within: 1e-9,
      source: "common-practice: own arithmetic",
    },
  ],
  limits: { grip: { from: 0 }, nut: { above: 0 }, pitch: { above: 0 } },
  compute: ({ grip, nut, pitch }) => ({ needed: grip + nut + 2 * pitch }),
});
