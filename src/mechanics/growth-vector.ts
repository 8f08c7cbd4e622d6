import { bounded } from "./bounded.ts";

/** Shift of a mount of a warm plate, as seen from its fixed mount, and the direction its slot must have. */
export const growthVector = bounded({
  name: "growth-vector",
  title: "Growth at a mount",
  inputs: {
    plate: { symbol: "alpha", unit: "1e-6/K", meaning: "expansion of the plate" },
    plateWarming: { symbol: "dT", unit: "K", meaning: "warming of the plate" },
    frame: { symbol: "alpha_f", unit: "1e-6/K", meaning: "expansion of the bars beneath" },
    frameWarming: { symbol: "dT_f", unit: "K", meaning: "warming of the bars beneath" },
    x: { symbol: "x", unit: "mm", meaning: "mount from the fixed mount" },
    y: { symbol: "y", unit: "mm", meaning: "mount from the fixed mount" },
  },
  results: {
    growth: { symbol: "delta", unit: "mm", meaning: "shift away from the fixed mount; negative towards it" },
    direction: { symbol: "theta", unit: "deg", meaning: "direction of the slot, counter-clockwise from +x" },
    travel: { symbol: "q", unit: "mm", meaning: "half travel that the slot needs" },
  },
  formulas: {
    growth: "(alpha * dT - alpha_f * dT_f) / 10^6 * sqrt(x^2 + y^2)",
    direction: '"the angle of (x, y), from -180 to 180"',
    travel: "abs(delta) + 0.5",
  },
  source: "openstax: thermal expansion",
  valid: "one temperature all through plate and bars, at most 200 K; the 0.5 is a design rule",
  examples: [
    {
      given: { plate: 23.4, plateWarming: 60, frame: 23.4, frameWarming: 0, x: 0, y: 427 },
      gives: { growth: 0.5995, direction: 90, travel: 1.0995 },
      within: 1e-4,
      source: "openstax: own arithmetic",
    },
  ],
  limits: {
    plate: { from: 0 },
    plateWarming: { from: -200, to: 200 },
    frame: { from: 0 },
    frameWarming: { from: -200, to: 200 },
  },
  compute: ({ plate, plateWarming, frame, frameWarming, x, y }) => {
    const length = Math.sqrt(x ** 2 + y ** 2);
    if (length === 0) return { refused: "the mount stands on the fixed mount, so it has no direction" };
    const growth = ((plate * plateWarming - frame * frameWarming) / 1e6) * length;
    return { growth, direction: (Math.atan2(y, x) * 180) / Math.PI, travel: Math.abs(growth) + 0.5 };
  },
});
