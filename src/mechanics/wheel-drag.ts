import { bounded } from "./bounded.ts";

/** Bounds of the load on a screw when wheels on its post drag, up or down. */
export const wheelDrag = bounded({
  name: "wheel-drag",
  title: "Screw load with dragging wheels",
  inputs: {
    load: { symbol: "F", unit: "N", meaning: "load on the screw without drag" },
    friction: { symbol: "mu", unit: "", meaning: "rolling drag of a wheel over its force" },
    wheels: { symbol: "S_N", unit: "N", meaning: "wheel forces, summed" },
  },
  results: {
    least: { symbol: "F_low", unit: "N", meaning: "load when lowering" },
    most: { symbol: "F_high", unit: "N", meaning: "load when raising" },
  },
  formulas: { least: "F - mu * S_N", most: "F + mu * S_N" },
  source: "statics",
  valid: "drag in proportion to the wheel forces",
  examples: [
    {
      given: { load: 50, friction: 0.02, wheels: 250 },
      gives: { least: 45, most: 55 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { friction: { from: 0, to: 1 }, wheels: { from: 0 } },
  compute: ({ load, friction, wheels }) => ({ least: load - friction * wheels, most: load + friction * wheels }),
});
