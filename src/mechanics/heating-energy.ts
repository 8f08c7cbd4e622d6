import { bounded } from "./bounded.ts";

/** Heat that warms a body, and the time a heater takes for it when nothing is lost. */
export const heatingEnergy = bounded({
  name: "heating-energy",
  title: "Energy to warm a plate",
  inputs: {
    mass: { symbol: "m", unit: "kg", meaning: "mass" },
    heat: { symbol: "c", unit: "J/(kg·K)", meaning: "specific heat" },
    warming: { symbol: "dT", unit: "K", meaning: "warming" },
    power: { symbol: "P", unit: "W", meaning: "heater power" },
  },
  results: {
    energy: { symbol: "E", unit: "J", meaning: "heat" },
    time: { symbol: "t", unit: "s", meaning: "time without loss" },
  },
  formulas: { energy: "m * c * dT", time: "E / P" },
  source: "openstax: heat capacity",
  valid: "one temperature all through; the real time is longer",
  examples: [
    {
      given: { mass: 3.584, heat: 896, warming: 60, power: 300 },
      gives: { energy: 192700, time: 642 },
      within: 8e-4,
      source: "openstax: own arithmetic",
    },
    {
      given: { mass: 0.5, heat: 900, warming: 60, power: 300 },
      gives: { energy: 27000 },
      within: 1e-9,
      source: "openstax: aluminium pan of the heat capacity example",
    },
    {
      given: { mass: 0.25, heat: 4186, warming: 60, power: 300 },
      gives: { energy: 62800 },
      within: 8e-4,
      source: "openstax: water of the heat capacity example",
    },
  ],
  limits: { mass: { above: 0 }, heat: { above: 0 }, warming: { from: 0 }, power: { above: 0 } },
  compute: ({ mass, heat, warming, power }) => {
    const energy = mass * heat * warming;
    return { energy, time: energy / power };
  },
});
