import { bounded } from "./bounded.ts";

/** Steps a second that the driver sends while the stage moves. */
export const stepRate = bounded({
  name: "step-rate",
  title: "Step rate of a lift",
  inputs: {
    speed: { symbol: "v", unit: "mm/s", meaning: "speed of the stage" },
    steps: { symbol: "q", unit: "", meaning: "steps for each mm" },
  },
  results: {
    rate: { symbol: "f_s", unit: "Hz", meaning: "steps a second" },
  },
  formulas: {
    rate: "v * q",
  },
  source: "geometry",
  valid: "constant speed",
  examples: [
    { given: { speed: 5, steps: 800 }, gives: { rate: 4000 }, within: 1e-9, source: "geometry: own arithmetic" },
  ],
  limits: { speed: { from: 0 }, steps: { above: 0 } },
  compute: ({ speed, steps }) => ({ rate: speed * steps }),
});
