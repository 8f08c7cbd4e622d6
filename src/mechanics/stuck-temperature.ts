import { bounded } from "./bounded.ts";

/** Temperature at which a plate ends when its heater stays on: why it needs a cut-out of its own. */
export const stuckTemperature = bounded({
  name: "stuck-temperature",
  title: "Temperature with the heater stuck on",
  inputs: {
    ambient: { symbol: "T_amb", unit: "°C", meaning: "air temperature" },
    power: { symbol: "P", unit: "W", meaning: "heater power" },
    loss: { symbol: "UA", unit: "W/K", meaning: "heat loss per degree" },
  },
  results: { temperature: { symbol: "T_end", unit: "°C", meaning: "temperature it ends at" } },
  formulas: { temperature: "T_amb + P / UA" },
  source: "incropera: lumped body",
  valid: "constant loss per degree; it grows with temperature, so above 250 °C the real end is lower",
  examples: [
    {
      given: { ambient: 20, power: 600, loss: 2.717 },
      gives: { temperature: 240.83 },
      within: 1e-4,
      source: "incropera: own arithmetic",
    },
  ],
  limits: { ambient: { from: -50, to: 60 }, power: { from: 0 }, loss: { above: 0 } },
  compute: ({ ambient, power, loss }) => ({ temperature: ambient + power / loss }),
});
