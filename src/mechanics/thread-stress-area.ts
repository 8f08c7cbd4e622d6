import { bounded } from "./bounded.ts";

/** Stress area of a metric thread: that of a smooth rod as strong as the bolt. */
export const threadStressArea = bounded({
  name: "thread-stress-area",
  title: "Stress area of a thread",
  inputs: {
    diameter: { symbol: "d", unit: "mm", meaning: "thread diameter" },
    pitch: { symbol: "p", unit: "mm", meaning: "thread pitch" },
  },
  results: { area: { symbol: "A_s", unit: "mm2", meaning: "stress area" } },
  formulas: { area: "pi / 4 * (d - 0.9382 * p)^2" },
  source: "iso-898-1",
  valid: "metric thread; a pitch that leaves no core is refused",
  examples: [
    {
      given: { diameter: 16, pitch: 2 },
      gives: { area: 156.67 },
      within: 4e-5,
      source: "iso-898-1: M16, engineering reference page",
    },
    {
      given: { diameter: 5, pitch: 0.8 },
      gives: { area: 14.2 },
      within: 2e-3,
      source: "iso-898-1: M5",
    },
  ],
  limits: { diameter: { above: 0 }, pitch: { above: 0 } },
  compute: ({ diameter, pitch }) => {
    const core = diameter - 0.9382 * pitch;
    return core > 0 ? { area: (Math.PI / 4) * core ** 2 } : { refused: "the pitch leaves the bolt no core" };
  },
});
