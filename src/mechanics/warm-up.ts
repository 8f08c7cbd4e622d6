import { refuse } from "../core/calculation.ts";
import { bounded, brief } from "./bounded.ts";

/** Time in which a heater warms a plate that loses heat while it warms. */
export const warmUp = bounded({
  name: "warm-up",
  title: "Warm-up time with loss",
  inputs: {
    mass: { symbol: "m", unit: "kg", meaning: "mass" },
    heat: { symbol: "c", unit: "J/(kg·K)", meaning: "specific heat" },
    warming: { symbol: "dT", unit: "K", meaning: "warming above the air" },
    power: { symbol: "P", unit: "W", meaning: "heater power" },
    loss: { symbol: "UA", unit: "W/K", meaning: "heat loss per degree" },
  },
  results: { time: { symbol: "t", unit: "s", meaning: "warm-up time" } },
  formulas: { time: "-m * c / UA * log(1 - UA * dT / P)" },
  source: "incropera: lumped body",
  valid: "plate up to 250 °C, starts as warm as the air; a warming the heater cannot reach is refused",
  examples: [
    {
      given: { mass: 3.584, heat: 896, warming: 60, power: 300, loss: 2.717 },
      gives: { time: 926.56 },
      within: 1e-5,
      source: "incropera: own arithmetic",
    },
  ],
  limits: {
    mass: { above: 0 },
    heat: { above: 0 },
    warming: { from: 0, to: 250 },
    power: { above: 0 },
    loss: { above: 0 },
  },
  compute: ({ mass, heat, warming, power, loss }) => {
    const used = (loss * warming) / power;
    if (used >= 1) {
      return refuse({
        name: "heater-never-gets-there",
        says: `the plate ends ${brief(power / loss)} K above the air and never gets there`,
        found: { value: power / loss, unit: "K" },
        limit: { value: warming, unit: "K" },
        why: "the plate loses all the heat that it gets before it is warm",
        set: `a heater of over ${brief(loss * warming)} W, insulation under the plate, or a cooler plate`,
      });
    }
    return { time: ((-mass * heat) / loss) * Math.log(1 - used) };
  },
});
