import { bounded } from "./bounded.ts";

/** Scale that makes up for what a part shrinks from hot to cold. */
export const shrinkScale = bounded({
  name: "shrink-scale",
  title: "Scale for the shrink of a material",
  inputs: {
    wanted: { symbol: "d", unit: "mm", meaning: "size the cold part should have" },
    shrink: { symbol: "s", unit: "%", meaning: "shrink of the material" },
  },
  results: {
    scale: { symbol: "k", unit: "", meaning: "scale of holes and outlines alike" },
    modelled: { symbol: "d_m", unit: "mm", meaning: "size that is drawn" },
  },
  formulas: {
    scale: "1 / (1 - s / 100)",
    modelled: "d * k",
  },
  source: "geometry",
  valid: "shrink 0 to 3 %, in the plane of the layers; outside it refuses",
  examples: [
    {
      given: { wanted: 200, shrink: 0.7 },
      gives: { scale: 1.00705, modelled: 201.41 },
      within: 5e-6,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { wanted: { above: 0 }, shrink: { from: 0, to: 3 } },
  compute: ({ wanted, shrink }) => {
    const scale = 1 / (1 - shrink / 100);
    return { scale, modelled: wanted * scale };
  },
});
