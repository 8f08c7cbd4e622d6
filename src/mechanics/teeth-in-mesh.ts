import { bounded } from "./bounded.ts";

/** Teeth of a pulley that the belt lies on, and the share of the tooth rating left below six of them. */
export const teethInMesh = bounded({
  name: "teeth-in-mesh",
  title: "Teeth in mesh",
  inputs: {
    teeth: { symbol: "z", unit: "", meaning: "teeth of the pulley" },
    wrap: { symbol: "w", unit: "deg", meaning: "angle over which the belt lies on it" },
  },
  results: {
    mesh: { symbol: "z_m", unit: "", meaning: "teeth in mesh; at least 6 wanted" },
    rating: { symbol: "c", unit: "", meaning: "share of the tooth rating that is left" },
  },
  formulas: { mesh: "z * w / 360", rating: "max(0, min(1, 1 - 0.2 * (6 - floor(z_m))))" },
  source: "belt-makers: drive design manuals",
  valid: "toothed side of the belt; below 6 teeth each missing one costs a fifth of the rating",
  examples: [
    {
      given: { teeth: 20, wrap: 165.3756 },
      gives: { mesh: 9.19, rating: 1 },
      within: 6e-4,
      source: "belt-makers: own arithmetic",
    },
    {
      given: { teeth: 20, wrap: 65.5726 },
      gives: { mesh: 3.643, rating: 0.4 },
      within: 2e-4,
      source: "belt-makers: own arithmetic",
    },
  ],
  limits: { teeth: { from: 8, whole: true }, wrap: { from: 0, to: 360 } },
  compute: ({ teeth, wrap }) => {
    const mesh = (teeth * wrap) / 360;
    return { mesh, rating: Math.max(0, Math.min(1, 1 - 0.2 * (6 - Math.floor(mesh)))) };
  },
});
