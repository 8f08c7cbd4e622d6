import { down } from "../core/rounding.ts";
import { bounded } from "./bounded.ts";

/** Lowest bed level that puts a seat on a layer boundary, for a part whose lower edge is free. */
export const bedOnLayer = bounded({
  name: "bed-on-layer",
  title: "Bed level that suits a seat",
  inputs: {
    seat: { symbol: "s", unit: "mm", meaning: "seat height" },
    lowest: { symbol: "z_min", unit: "mm", meaning: "lowest bed level allowed" },
    first: { symbol: "h_1", unit: "mm", meaning: "first layer" },
    layer: { symbol: "h", unit: "mm", meaning: "layer height" },
  },
  results: { bed: { symbol: "z_bed", unit: "mm", meaning: "bed level" } },
  formulas: { bed: "s - h_1 - down(s - z_min - h_1, h)" },
  source: "geometry",
  valid: "layers 0.05 to 0.4 mm, seat at least a first layer above the lowest level; else it refuses",
  examples: [
    {
      given: { seat: 4.5, lowest: -20, first: 0.2, layer: 0.2 },
      gives: { bed: -19.9 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { first: { from: 0.05, to: 0.8 }, layer: { from: 0.05, to: 0.4 } },
  compute: ({ seat, lowest, first, layer }) => {
    const height = seat - lowest - first;
    if (height < 0) return { refused: "the seat lies below the first layer" };
    return { bed: seat - first - down(height, layer) };
  },
});
