import { bounded } from "./bounded.ts";

/** Gap in plan between a belt and a round that it passes: a screw, a post, a bolt head, a hub. */
export const beltPostGap = bounded({
  name: "belt-post-gap",
  title: "Gap between a belt and a round beside it",
  inputs: {
    distance: { symbol: "a", unit: "mm", meaning: "plan distance from the pitch line to the axis" },
    radius: { symbol: "r", unit: "mm", meaning: "radius of the round" },
    beyond: { symbol: "t_b", unit: "mm", meaning: "belt beyond its pitch line on that side" },
  },
  results: {
    gap: { symbol: "gap", unit: "mm", meaning: "air between them; 2 wanted, 1.5 beside a hub" },
  },
  formulas: {
    gap: "a - r - t_b",
  },
  source: "geometry",
  valid: "a negative gap is an overlap",
  examples: [
    {
      given: { distance: 8.376, radius: 4, beyond: 0.376 },
      gives: { gap: 4 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { distance: { from: 0 }, radius: { from: 0 }, beyond: { from: 0 } },
  compute: ({ distance, radius, beyond }) => ({ gap: distance - radius - beyond }),
});
