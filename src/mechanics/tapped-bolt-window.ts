import { bounded } from "./bounded.ts";

/** Shortest and longest bolt from below into a tapped plate on a stack whose height is adjusted. */
export const tappedBoltWindow = bounded({
  name: "tapped-bolt-window",
  title: "Bolt length into a tapped plate",
  inputs: {
    longGrip: { symbol: "g_long", unit: "mm", meaning: "stack below the plate at its longest setting" },
    shortGrip: { symbol: "g_short", unit: "mm", meaning: "stack below the plate at its shortest setting" },
    depth: { symbol: "t", unit: "mm", meaning: "tapped depth of the plate" },
    diameter: { symbol: "d", unit: "mm", meaning: "bolt diameter" },
  },
  results: {
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest bolt: 1 d of thread at the longest setting" },
    longest: {
      symbol: "L_max",
      unit: "mm",
      meaning: "longest bolt: 0.5 mm below the far face at the shortest setting",
    },
  },
  formulas: { shortest: "g_long + d", longest: "g_short + t - 0.5" },
  source: "common-practice",
  valid: "steel bolt in aluminium, full thread; a plate too thin for the travel is refused",
  examples: [
    {
      given: { longGrip: 25.2, shortGrip: 24.2, depth: 6.35, diameter: 4 },
      gives: { shortest: 29.2, longest: 30.05 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { longGrip: { from: 0 }, shortGrip: { from: 0 }, depth: { above: 0 }, diameter: { above: 0 } },
  compute: ({ longGrip, shortGrip, depth, diameter }) => {
    if (shortGrip > longGrip) return { refused: "g_short is above g_long" };
    const shortest = longGrip + diameter;
    const longest = shortGrip + depth - 0.5;
    if (shortest > longest) return { refused: "the plate is too thin for this travel and 1 d of thread" };
    return { shortest, longest };
  },
});
