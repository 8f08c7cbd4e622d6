import { bounded } from "./bounded.ts";

/** Roof of a level hole that prints without support: 45 deg, cut flat one layer above the circle. */
export const teardropRoof = bounded({
  name: "teardrop-roof",
  title: "Roof of a level printed hole",
  inputs: {
    diameter: { symbol: "d", unit: "mm", meaning: "diameter of the hole as it is drawn" },
    layer: { symbol: "h", unit: "mm", meaning: "layer height" },
  },
  results: {
    apex: { symbol: "z_a", unit: "mm", meaning: "height of the uncut apex above the axis" },
    roof: { symbol: "z_r", unit: "mm", meaning: "height of the roof above the axis" },
    flat: { symbol: "b_r", unit: "mm", meaning: "width of the flat roof: the bridge that is printed" },
  },
  formulas: {
    apex: "d / 2 * sqrt(2)",
    roof: "min(d / 2 + max(h, 0.3), z_a)",
    flat: "2 * (z_a - z_r)",
  },
  source: "geometry",
  valid: "roofs of 45 deg, layers 0.05 to 0.4 mm; a small hole keeps its apex and has no flat",
  examples: [
    { given: { diameter: 5.75, layer: 0.2 }, gives: { flat: 1.782 }, within: 3e-4, source: "geometry: own arithmetic" },
    { given: { diameter: 10, layer: 0.2 }, gives: { apex: 7.071 }, within: 1e-4, source: "geometry: own arithmetic" },
  ],
  limits: { diameter: { above: 0 }, layer: { from: 0.05, to: 0.4 } },
  compute: ({ diameter, layer }) => {
    const apex = (diameter / 2) * Math.SQRT2;
    const roof = Math.min(diameter / 2 + Math.max(layer, 0.3), apex);
    return { apex, roof, flat: 2 * (apex - roof) };
  },
});
