import { bounded } from "./bounded.ts";

/** Area of plastic that shears when a bolt is torn out of a thread in it. */
export const threadShearArea = bounded({
  name: "thread-shear-area",
  title: "Shear area of a thread in plastic",
  inputs: {
    pitchDiameter: { symbol: "d_2", unit: "mm", meaning: "pitch diameter of the thread" },
    engaged: { symbol: "L_e", unit: "mm", meaning: "engaged length" },
  },
  results: { area: { symbol: "A", unit: "mm2", meaning: "shear area" } },
  formulas: { area: "pi * d_2 * L_e / 2" },
  source: "machinerys-handbook: estimate, half of the pitch cylinder",
  valid: "an estimate; full threads over the engaged length",
  examples: [
    {
      given: { pitchDiameter: 3.545, engaged: 8 },
      gives: { area: 44.5 },
      within: 2e-3,
      source: "machinerys-handbook: own arithmetic",
    },
  ],
  limits: { pitchDiameter: { above: 0 }, engaged: { above: 0 } },
  compute: ({ pitchDiameter, engaged }) => ({ area: (Math.PI * pitchDiameter * engaged) / 2 }),
});
