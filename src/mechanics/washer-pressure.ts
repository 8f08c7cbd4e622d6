import { bounded } from "./bounded.ts";

/** Pressure that a washer, or a ring of any kind, puts on what lies under it. */
export const washerPressure = bounded({
  name: "washer-pressure",
  title: "Pressure under a washer",
  inputs: {
    force: { symbol: "F", unit: "N", meaning: "clamp force" },
    washer: { symbol: "D_w", unit: "mm", meaning: "outside diameter of the washer" },
    hole: { symbol: "d_h", unit: "mm", meaning: "diameter of the hole under it" },
  },
  results: {
    area: { symbol: "A", unit: "mm2", meaning: "area under the washer" },
    pressure: { symbol: "p", unit: "MPa", meaning: "pressure under the washer" },
  },
  formulas: { area: "pi / 4 * (D_w^2 - d_h^2)", pressure: "F / A" },
  source: "geometry",
  valid: "a washer stiff enough to spread the force; a hole as wide as the washer is refused",
  examples: [
    {
      given: { force: 667, washer: 7, hole: 3.2 },
      gives: { pressure: 22 },
      within: 0.023,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, washer: { above: 0 }, hole: { from: 0 } },
  compute: ({ force, washer, hole }) => {
    if (hole >= washer) return { refused: "the hole is as wide as the washer" };
    const area = (Math.PI / 4) * (washer ** 2 - hole ** 2);
    return { area, pressure: force / area };
  },
});
