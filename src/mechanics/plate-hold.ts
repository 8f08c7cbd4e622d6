import { bounded } from "./bounded.ts";

/** How firmly the tram springs hold a plate: friction against a sideways push, and the note it would bounce with. */
export const plateHold = bounded({
  name: "plate-hold",
  title: "Hold of a plate on its springs",
  inputs: {
    friction: { symbol: "mu", unit: "", meaning: "friction under the sliding washers; 0.2" },
    force: { symbol: "S_F", unit: "N", meaning: "spring forces, summed" },
    push: { symbol: "F_q", unit: "N", meaning: "sideways push: nozzle drag, or mass times acceleration" },
    rate: { symbol: "S_k", unit: "N/mm", meaning: "spring rates, summed" },
    mass: { symbol: "m", unit: "kg", meaning: "mass on the springs" },
  },
  results: {
    factor: { symbol: "S", unit: "", meaning: "friction over push; at least 1" },
    frequency: { symbol: "f", unit: "Hz", meaning: "natural frequency up and down" },
  },
  formulas: { factor: "mu * S_F / F_q", frequency: "sqrt(1000 * S_k / m) / (2 * pi)" },
  source: "statics",
  valid: "linear springs; the friction is common practice",
  examples: [
    {
      given: { friction: 0.2, force: 139.5, push: 5, rate: 15.498, mass: 4.9 },
      gives: { factor: 5.58, frequency: 8.95 },
      within: 1e-3,
      source: "statics: own arithmetic",
    },
  ],
  limits: {
    friction: { above: 0, to: 1 },
    force: { from: 0 },
    push: { above: 0 },
    rate: { above: 0 },
    mass: { above: 0 },
  },
  compute: ({ friction, force, push, rate, mass }) => ({
    factor: (friction * force) / push,
    frequency: Math.sqrt((1000 * rate) / mass) / (2 * Math.PI),
  }),
});
