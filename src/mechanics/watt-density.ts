import { bounded } from "./bounded.ts";

/** Heater power per area, and the current it draws. */
export const wattDensity = bounded({
  name: "watt-density",
  title: "Watt density and current of a heater",
  inputs: {
    power: { symbol: "P", unit: "W", meaning: "heater power" },
    area: { symbol: "A", unit: "m2", meaning: "heater area" },
    voltage: { symbol: "V", unit: "V", meaning: "supply voltage" },
  },
  results: {
    density: { symbol: "q", unit: "W/cm2", meaning: "watt density; 0.4 to 1.2 usual, 2 the most" },
    current: { symbol: "I", unit: "A", meaning: "current" },
  },
  formulas: { density: "P / (10000 * A)", current: "P / V" },
  source: "common-practice",
  valid: "resistive heater stuck to a plate; above 2 W/cm2 the adhesive burns",
  examples: [
    {
      given: { power: 600, area: 0.16, voltage: 120 },
      gives: { density: 0.375, current: 5 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { power: { from: 0 }, area: { above: 0 }, voltage: { above: 0 } },
  compute: ({ power, area, voltage }) => ({ density: power / (10000 * area), current: power / voltage }),
});
