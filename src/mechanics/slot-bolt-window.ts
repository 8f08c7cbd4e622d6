import { bounded } from "./bounded.ts";

/**
 * Shortest and longest bolt that holds a plate to a slot nut: enough thread in the nut, and 1 mm kept free above the
 * bottom of the slot, on which a longer bolt would jack itself up with the plate still loose.
 */
export const slotBoltWindow = bounded({
  name: "slot-bolt-window",
  title: "Bolt length into a slot nut",
  inputs: {
    grip: { symbol: "g", unit: "mm", meaning: "plastic under the head and washer" },
    threadStart: {
      symbol: "t_start",
      unit: "mm",
      meaning: "depth below the bar's face at which the nut's thread begins",
    },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
    slotDepth: { symbol: "t_slot", unit: "mm", meaning: "depth of the slot below the bar's face" },
  },
  results: {
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest bolt" },
    longest: { symbol: "L_max", unit: "mm", meaning: "longest bolt" },
  },
  formulas: { shortest: "g + t_start + 0.8 * d", longest: "g + t_slot - 1" },
  source: "common-practice",
  valid: "M2.5 to M8; a slot too shallow for 0.8 d of thread and 1 mm of air is refused",
  examples: [
    {
      given: { grip: 7, threadStart: 0.5, diameter: 5, slotDepth: 6.1 },
      gives: { shortest: 11.5, longest: 12.1 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { grip: { from: 0 }, threadStart: { from: 0 }, diameter: { above: 0 }, slotDepth: { above: 1 } },
  compute: ({ grip, threadStart, diameter, slotDepth }) => {
    const engaged = threadStart + 0.8 * diameter;
    if (engaged > slotDepth - 1)
      return { refused: "the slot is too shallow for 0.8 d of thread and 1 mm below the tip" };
    return { shortest: grip + engaged, longest: grip + slotDepth - 1 };
  },
});
