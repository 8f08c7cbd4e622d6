import { bounded } from "./bounded.ts";

/** How often the set screws of a pulley cover the thrust of a crash; below 1 the pulley slips and no bracket breaks. */
export const crashFactor = bounded({
  name: "crash-factor",
  title: "Set screws in a crash",
  inputs: {
    hold: { symbol: "F_hold", unit: "N", meaning: "hold of all set screws" },
    load: { symbol: "F_a", unit: "N", meaning: "steady thrust" },
    crash: { symbol: "F_crash", unit: "N", meaning: "force of the stalled motor on this screw" },
  },
  results: {
    factor: { symbol: "S_c", unit: "", meaning: "hold over thrust; below 1 the pulley slips on the screw" },
  },
  formulas: {
    factor: "F_hold / (F_a + F_crash)",
  },
  source: "statics",
  valid: "the whole stall force on one screw, which is the worst case",
  examples: [
    {
      given: { hold: 534, load: 50, crash: 207.7 },
      gives: { factor: 2.072 },
      within: 3e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { hold: { above: 0 }, load: { from: 0 }, crash: { above: 0 } },
  compute: ({ hold, load, crash }) => ({ factor: hold / (load + crash) }),
});
