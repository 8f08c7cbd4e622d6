import { bounded } from "./bounded.ts";

/** Load on each of two screws by the lever rule, and the moment across their line that wheels must take. */
export const twoScrewShare = bounded({
  name: "two-screw-share",
  title: "Load on two screws",
  inputs: {
    weight: { symbol: "W", unit: "N", meaning: "weight of all masses" },
    spacing: { symbol: "L", unit: "mm", meaning: "distance of the screws" },
    along: { symbol: "u", unit: "mm", meaning: "centre of mass from screw A towards screw B" },
    across: { symbol: "v", unit: "mm", meaning: "centre of mass beside the line of the screws" },
  },
  results: {
    onA: { symbol: "F_A", unit: "N", meaning: "load on screw A" },
    onB: { symbol: "F_B", unit: "N", meaning: "load on screw B" },
    moment: { symbol: "M", unit: "N·mm", meaning: "moment left for the wheels" },
  },
  formulas: { onA: "W - F_B", onB: "W * u / L", moment: "W * abs(v)" },
  source: "statics",
  valid: "rigid stage, vertical loads; a negative load means that the stage lifts off that screw",
  examples: [
    {
      given: { weight: 40, spacing: 400, along: 100, across: 50 },
      gives: { onA: 30, onB: 10, moment: 2000 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { weight: { above: 0 }, spacing: { above: 0 } },
  compute: ({ weight, spacing, along, across }) => {
    const onB = (weight * along) / spacing;
    return { onA: weight - onB, onB, moment: weight * Math.abs(across) };
  },
});
