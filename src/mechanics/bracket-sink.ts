import { bounded } from "./bounded.ts";

/** Sink of a bracket's seat under a lasting load: bending and shear of a short arm, times a creep factor. */
export const bracketSink = bounded({
  name: "bracket-sink",
  title: "Sink of a bracket's seat",
  inputs: {
    force: { symbol: "F_a", unit: "N", meaning: "thrust on the seat" },
    lever: { symbol: "a", unit: "mm", meaning: "distance of the seat's axis from the root" },
    width: { symbol: "b", unit: "mm", meaning: "width of the section at the root" },
    height: { symbol: "h", unit: "mm", meaning: "height of the section at the root" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus of the plastic" },
    creep: { symbol: "c", unit: "", meaning: "creep factor: sink after years over sink at once" },
  },
  results: {
    bending: { symbol: "delta_b", unit: "mm", meaning: "sink by bending at once" },
    shear: { symbol: "delta_s", unit: "mm", meaning: "sink by shear at once" },
    sink: { symbol: "delta", unit: "mm", meaning: "sink after years" },
  },
  formulas: {
    bending: "4 * F_a * a^3 / (E * b * h^3)",
    shear: "1.2 * 2.7 * F_a * a / (E * b * h)",
    sink: "(delta_b + delta_s) * c",
  },
  source: "shigley: 4-7, beam deflection by bending and shear",
  valid: "rectangular root, shear modulus E / 2.7 (Poisson 0.35); the creep factor is common practice",
  examples: [
    {
      given: { force: 50, lever: 17, width: 32.12, height: 31, modulus: 2000, creep: 3 },
      gives: { sink: 0.006 },
      within: 0.09,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    force: { from: 0 },
    lever: { from: 0 },
    width: { above: 0 },
    height: { above: 0 },
    modulus: { above: 0 },
    creep: { from: 1 },
  },
  compute: ({ force, lever, width, height, modulus, creep }) => {
    const bending = (4 * force * lever ** 3) / (modulus * width * height ** 3);
    const shear = (1.2 * 2.7 * force * lever) / (modulus * width * height);
    return { bending, shear, sink: (bending + shear) * creep };
  },
});
