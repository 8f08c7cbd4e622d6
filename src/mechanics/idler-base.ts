import { bounded } from "./bounded.ts";

/** Height of the block under an idler that runs at a belt plane. */
export const idlerBase = bounded({
  name: "idler-base",
  title: "Height of an idler's block",
  inputs: {
    plane: { symbol: "z_belt", unit: "mm", meaning: "belt plane" },
    idler: { symbol: "H_i", unit: "mm", meaning: "idler height" },
    boss: { symbol: "h_boss", unit: "mm", meaning: "boss under the inner ring" },
    washers: { symbol: "t_w", unit: "mm", meaning: "washers under the idler, summed" },
  },
  results: { base: { symbol: "z_base", unit: "mm", meaning: "top of the block, without its boss" } },
  formulas: { base: "z_belt - H_i / 2 - h_boss - t_w" },
  source: "geometry",
  valid: "idler whose groove lies in its middle",
  examples: [
    {
      given: { plane: 24, idler: 8.5, boss: 0.6, washers: 0 },
      gives: { base: 19.15 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { idler: { above: 0 }, boss: { from: 0 }, washers: { from: 0 } },
  compute: ({ plane, idler, boss, washers }) => ({ base: plane - idler / 2 - boss - washers }),
});
