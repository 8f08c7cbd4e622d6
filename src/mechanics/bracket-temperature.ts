import { bounded } from "./bounded.ts";

/**
 * Estimated temperature of a printed bracket under a hot plate: a share of the plate's warmth that falls with the air
 * gap, and 5 K for what the bolt conducts. Coarse and on the safe side; measure the real one.
 */
export const bracketTemperature = bounded({
  name: "bracket-temperature",
  title: "Temperature of a bracket under the plate",
  inputs: {
    plate: { symbol: "T_plate", unit: "°C", meaning: "plate temperature" },
    ambient: { symbol: "T_amb", unit: "°C", meaning: "air temperature" },
    gap: { symbol: "g", unit: "mm", meaning: "air gap between plate and bracket" },
  },
  results: {
    share: { symbol: "phi", unit: "", meaning: "share of the plate's warmth that reaches the bracket" },
    bracket: { symbol: "T_b", unit: "°C", meaning: "bracket temperature" },
  },
  formulas: {
    share: "min(0.6, max(0.15, 0.45 - 0.2 / 15 * (g - 10)))",
    bracket: "T_amb + phi * max(T_plate - T_amb, 0) + 5",
  },
  source: "common-practice",
  valid: "plate up to 250 °C, gap 0 to 60 mm; a plate colder than the air counts as being as warm as the air",
  differs: [
    "30 K below the heat deflection temperature for a constant load leaves PLA 22 °C: the stress is limited instead",
  ],
  examples: [
    {
      given: { plate: 80, ambient: 20, gap: 18.2 },
      gives: { share: 0.3407, bracket: 45.4 },
      within: 1e-3,
      source: "common-practice: own arithmetic",
    },
  ],
  limits: { plate: { from: -50, to: 250 }, ambient: { from: -50, to: 60 }, gap: { from: 0, to: 60 } },
  compute: ({ plate, ambient, gap }) => {
    const share = Math.min(0.6, Math.max(0.15, 0.45 - (0.2 / 15) * (gap - 10)));
    return { share, bracket: ambient + share * Math.max(plate - ambient, 0) + 5 };
  },
});
