import { bounded } from "./bounded.ts";

/** Change of a length when its temperature changes. */
export const thermalGrowth = bounded({
  name: "thermal-growth",
  title: "Thermal growth",
  inputs: {
    expansion: { symbol: "alpha", unit: "1e-6/K", meaning: "coefficient of thermal expansion" },
    length: { symbol: "L", unit: "mm", meaning: "length when cold" },
    warming: { symbol: "dT", unit: "K", meaning: "change of temperature, negative when it cools" },
  },
  results: { growth: { symbol: "delta", unit: "mm", meaning: "growth of the length" } },
  formulas: { growth: "alpha * L * dT / 10^6" },
  source: "openstax: thermal expansion",
  valid: "one temperature all through, at most 200 K of change, constant coefficient",
  examples: [
    {
      given: { expansion: 12, length: 1275000, warming: 55 },
      gives: { growth: 840 },
      within: 6e-3,
      source: "openstax: bridge span, 0.84 m, from memory",
    },
    {
      given: { expansion: 23.4, length: 457.2, warming: 80 },
      gives: { growth: 0.8559 },
      within: 6e-5,
      source: "openstax: own arithmetic",
    },
  ],
  limits: { expansion: { from: 0 }, length: { from: 0 }, warming: { from: -200, to: 200 } },
  compute: ({ expansion, length, warming }) => ({ growth: (expansion * length * warming) / 1e6 }),
});
