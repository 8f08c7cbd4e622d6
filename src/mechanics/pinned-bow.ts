import { bounded } from "./bounded.ts";

/** Height to which a plate held fast at both ends would bow when it grows: why one mount alone is fixed. */
export const pinnedBow = bounded({
  name: "pinned-bow",
  title: "Bow of a plate held fast",
  inputs: {
    length: { symbol: "L", unit: "mm", meaning: "distance of the two fixed mounts" },
    growth: { symbol: "delta", unit: "mm", meaning: "growth if it were free" },
  },
  results: { bow: { symbol: "f", unit: "mm", meaning: "height of the bow" } },
  formulas: { bow: "sqrt(3 * L * delta / 8)" },
  source: "geometry",
  valid: "shallow arc, mounts that do not give; growth up to a fiftieth of the length",
  examples: [
    {
      given: { length: 450, growth: 0.8 },
      gives: { bow: 11.6 },
      within: 2e-3,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { length: { above: 0 }, growth: { from: 0 } },
  compute: ({ length, growth }) => {
    if (growth > length / 50)
      return { refused: "the growth is over a fiftieth of the length, too much for this formula" };
    return { bow: Math.sqrt((3 * length * growth) / 8) };
  },
});
