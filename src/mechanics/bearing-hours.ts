import { bounded } from "./bounded.ts";

/** Rating life of a bearing in hours at a steady speed. */
export const bearingHours = bounded({
  name: "bearing-hours",
  title: "Rating life in hours",
  inputs: {
    life: { symbol: "L_10", unit: "Mrev", meaning: "rating life" },
    speed: { symbol: "n", unit: "rpm", meaning: "speed" },
  },
  results: {
    hours: { symbol: "L_h", unit: "h", meaning: "rating life in hours" },
  },
  formulas: {
    hours: "L_10 * 10^6 / (60 * n)",
  },
  source: "iso-281",
  valid: "steady speed",
  examples: [
    { given: { life: 1000, speed: 1500 }, gives: { hours: 11111 }, within: 1.1e-4, source: "iso-281: reference page" },
    {
      given: { life: 421.875, speed: 1500 },
      gives: { hours: 4688 },
      within: 1.1e-4,
      source: "iso-281: reference page",
    },
  ],
  limits: { life: { above: 0 }, speed: { above: 0 } },
  compute: ({ life, speed }) => ({ hours: (life * 1e6) / (60 * speed) }),
});
