import { bounded } from "./bounded.ts";

/** Length over all of a slot that lets a bolt move crosswise by its clearance. */
export const slotLength = bounded({
  name: "slot-length",
  title: "Length of a crosswise slot",
  inputs: {
    hole: { symbol: "d_c", unit: "mm", meaning: "clearance hole of the bolt" },
    clearance: { symbol: "c", unit: "mm", meaning: "way the bolt must have" },
  },
  results: {
    length: { symbol: "l", unit: "mm", meaning: "length over all" },
  },
  formulas: {
    length: "d_c + c",
  },
  source: "geometry",
  valid: "round ends as wide as the hole",
  examples: [
    {
      given: { hole: 5.5, clearance: 0.393 },
      gives: { length: 5.893 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { hole: { above: 0 }, clearance: { from: 0 } },
  compute: ({ hole, clearance }) => ({ length: hole + clearance }),
});
