import { tidy } from "../core/rounding.ts";
import { bounded } from "./bounded.ts";

/** Nearest layer height that is a whole number of full steps, and what a height beside it does to the print. */
export const layerSnap = bounded({
  name: "layer-snap",
  title: "Layer height on whole full steps",
  inputs: {
    layer: { symbol: "h", unit: "mm", meaning: "layer height wanted" },
    step: { symbol: "h_step", unit: "mm", meaning: "lift per full step" },
  },
  results: {
    steps: { symbol: "k", unit: "", meaning: "full steps of the nearest height" },
    snapped: { symbol: "h_k", unit: "mm", meaning: "nearest height of whole full steps" },
    error: { symbol: "e", unit: "mm", meaning: "wanted less nearest, per layer" },
    beat: { symbol: "H_beat", unit: "mm", meaning: "height after which the error repeats; 0 when there is none" },
  },
  formulas: {
    steps: "max(round(h / h_step), 1)",
    snapped: "k * h_step",
    error: "h - h_k",
    beat: '"h times h_step over the size of e, the height in which the error adds up to a full step; 0 without error"',
  },
  source: "geometry",
  valid: "layers of at least half a full step; thinner ones are refused",
  examples: [
    {
      given: { layer: 0.12, step: 0.02 },
      gives: { steps: 6, snapped: 0.12 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
    {
      given: { layer: 0.15, step: 0.04 },
      gives: { steps: 4, snapped: 0.16, error: -0.01, beat: 0.6 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { layer: { above: 0 }, step: { above: 0 } },
  compute: ({ layer, step }) => {
    if (layer < step / 2) return { refused: "the layer is thinner than half a full step" };
    const steps = Math.max(Math.round(layer / step), 1);
    const snapped = steps * step;
    const error = layer - snapped;
    const beat = Math.abs(error) < 1e-9 ? 0 : (layer * step) / Math.abs(error);
    return { steps, snapped, error, beat };
  },
});

/** Returns the layer heights of whole full steps from `thinnest` to `thickest`, mm; at most 1000 of them. */
export function friendlyLayers(step: number, thinnest: number, thickest: number): readonly number[] {
  if (!(step > 0 && thinnest > 0 && thickest >= thinnest && Number.isFinite(thickest))) return [];
  const first = Math.ceil(thinnest / step - 1e-6);
  const last = Math.min(Math.floor(thickest / step + 1e-6), first + 999);
  const count = Math.max(0, last - first + 1);
  return Array.from({ length: count }, (_, index) => tidy((first + index) * step)).filter(Number.isFinite);
}
