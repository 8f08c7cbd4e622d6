import { bounded } from "./bounded.ts";

/** Shortest and longest bolt into a heat-set insert. */
export const insertBoltWindow = bounded({
  name: "insert-bolt-window",
  title: "Bolt length into a heat-set insert",
  inputs: {
    grip: { symbol: "grip", unit: "mm", meaning: "all between the head and the insert's near face" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
    depth: { symbol: "t", unit: "mm", meaning: "free depth from the insert's near face to the bottom of its bore" },
  },
  results: {
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest bolt: 1 d of thread in the insert" },
    longest: { symbol: "L_max", unit: "mm", meaning: "longest bolt: 0.5 mm above the bottom" },
  },
  formulas: { shortest: "grip + d", longest: "grip + t - 0.5" },
  source: "common-practice",
  valid: "insert at least 1 d long; a bore too shallow for 1 d of thread is refused",
  examples: [
    {
      given: { grip: 10, diameter: 3, depth: 6.7 },
      gives: { shortest: 13, longest: 16.2 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { grip: { from: 0 }, diameter: { above: 0 }, depth: { above: 0 } },
  compute: ({ grip, diameter, depth }) => {
    if (diameter > depth - 0.5)
      return { refused: "the bore is too shallow for 1 d of thread and 0.5 mm below the tip" };
    return { shortest: grip + diameter, longest: grip + depth - 0.5 };
  },
});
