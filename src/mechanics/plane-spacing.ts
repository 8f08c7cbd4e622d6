import { bounded } from "./bounded.ts";

/** Distance of the belt planes of two pulleys on one shaft, for each way of putting them on. */
export const planeSpacing = bounded({
  name: "plane-spacing",
  title: "Belt planes of two pulleys on one shaft",
  inputs: {
    pulley: { symbol: "H_p", unit: "mm", meaning: "pulley height, hub included" },
    groove: { symbol: "w_t", unit: "mm", meaning: "width between the flanges" },
    flange: { symbol: "t_f", unit: "mm", meaning: "flange thickness" },
    hub: { symbol: "h_hub", unit: "mm", meaning: "hub length" },
    gap: { symbol: "gap", unit: "mm", meaning: "gap between the pulleys" },
  },
  results: {
    double: { symbol: "a_double", unit: "mm", meaning: "one body with a flange shared by both grooves" },
    toothed: { symbol: "a_teeth", unit: "mm", meaning: "toothed ends facing each other" },
    hubs: { symbol: "a_hubs", unit: "mm", meaning: "hubs facing each other" },
    same: { symbol: "a_same", unit: "mm", meaning: "both the same way up" },
  },
  formulas: {
    double: "w_t + t_f",
    toothed: "w_t + 2 * t_f + gap",
    hubs: "w_t + 2 * t_f + 2 * h_hub + gap",
    same: "H_p + gap",
  },
  source: "geometry",
  valid: "two like pulleys with equal flanges",
  examples: [
    {
      given: { pulley: 16, groove: 7, flange: 1, hub: 7, gap: 0.5 },
      gives: { double: 8, toothed: 9.5, hubs: 23.5, same: 16.5 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {
    pulley: { above: 0 },
    groove: { above: 0 },
    flange: { from: 0 },
    hub: { from: 0 },
    gap: { from: 0 },
  },
  compute: ({ pulley, groove, flange, hub, gap }) => ({
    double: groove + flange,
    toothed: groove + 2 * flange + gap,
    hubs: groove + 2 * flange + 2 * hub + gap,
    same: pulley + gap,
  }),
});
