import { bounded } from "./bounded.ts";

/** Interference of a bearing in a pocket, and its share of the diameter. Negative when the pocket is loose. */
export const pressFitInterference = bounded({
  name: "press-fit-interference",
  title: "Interference of a press fit",
  inputs: {
    ring: { symbol: "D", unit: "mm", meaning: "outside diameter of the bearing" },
    pocket: { symbol: "D_p", unit: "mm", meaning: "finished diameter of the pocket" },
  },
  results: {
    interference: { symbol: "i", unit: "mm", meaning: "interference on the diameter" },
    share: { symbol: "epsilon", unit: "%", meaning: "interference over diameter" },
  },
  formulas: { interference: "D - D_p", share: "100 * i / D" },
  source: "geometry",
  valid: "up to 0.4 % in PLA, ABS, ASA and PC, 0.6 % in PETG and PA (common practice); above it the pocket cracks",
  examples: [
    {
      given: { ring: 22, pocket: 21.92 },
      gives: { interference: 0.08, share: 0.3636 },
      within: 2e-4,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { ring: { above: 0 }, pocket: { above: 0 } },
  compute: ({ ring, pocket }) => ({ interference: ring - pocket, share: (100 * (ring - pocket)) / ring }),
});
