import { down, up } from "../core/rounding.ts";
import { bounded } from "./bounded.ts";

/**
 * Seat height on the nearest layer boundary of a part whose bed level is fixed. A tie goes down, since a shim can only
 * raise a seat.
 */
export const seatOnLayer = bounded({
  name: "seat-on-layer",
  title: "Seat height on a layer boundary",
  inputs: {
    seat: { symbol: "s", unit: "mm", meaning: "seat height wanted" },
    bed: { symbol: "z_bed", unit: "mm", meaning: "height of the face that is printed on the bed" },
    first: { symbol: "h_1", unit: "mm", meaning: "first layer" },
    layer: { symbol: "h", unit: "mm", meaning: "layer height" },
  },
  results: {
    printed: { symbol: "s_q", unit: "mm", meaning: "seat height as printed" },
    residual: { symbol: "r", unit: "mm", meaning: "printed less wanted; positive puts the belt high" },
    below: { symbol: "s_low", unit: "mm", meaning: "the layer boundary below, for a seat that is shimmed" },
  },
  formulas: {
    printed: "z_bed + h_1 + up(s - z_bed - h_1 - h / 2, h)",
    residual: "s_q - s",
    below: "z_bed + h_1 + down(s - z_bed - h_1, h)",
  },
  source: "geometry",
  valid: "layers 0.05 to 0.4 mm, seat above the first layer; else it refuses",
  examples: [
    {
      given: { seat: 11.5, bed: 0, first: 0.2, layer: 0.2 },
      gives: { printed: 11.4, residual: -0.1, below: 11.4 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { first: { from: 0.05, to: 0.8 }, layer: { from: 0.05, to: 0.4 } },
  compute: ({ seat, bed, first, layer }) => {
    const height = seat - bed - first;
    if (height < 0) return { refused: "the seat lies below the first layer" };
    const printed = bed + first + up(height - layer / 2, layer);
    const below = bed + first + down(height, layer);
    return { printed, residual: printed - seat, below };
  },
});
