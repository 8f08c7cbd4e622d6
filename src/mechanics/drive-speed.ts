import { bounded } from "./bounded.ts";

/** Speeds and belt travel of a lift drive at a lifting speed. */
export const driveSpeed = bounded({
  name: "drive-speed",
  title: "Motor speed and belt travel of a lift",
  inputs: {
    speed: { symbol: "v", unit: "mm/s", meaning: "lifting speed" },
    ratio: { symbol: "i", unit: "", meaning: "motor turns per screw turn" },
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screw" },
    lift: { symbol: "H", unit: "mm", meaning: "lift" },
    screwTeeth: { symbol: "z_s", unit: "", meaning: "teeth of the screw's pulley" },
    pitch: { symbol: "p", unit: "mm", meaning: "belt pitch" },
  },
  results: {
    screw: { symbol: "n_s", unit: "rpm", meaning: "screw speed" },
    motor: { symbol: "n", unit: "rpm", meaning: "motor speed" },
    travel: { symbol: "s_b", unit: "mm", meaning: "belt travel over the lift" },
  },
  formulas: { screw: "60 * v / l", motor: "n_s * i", travel: "H / l * z_s * p" },
  source: "geometry",
  valid: "no slip between belt and pulleys",
  examples: [
    {
      given: { speed: 4, ratio: 2, lead: 8, lift: 100, screwTeeth: 40, pitch: 2 },
      gives: { screw: 30, motor: 60, travel: 1000 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {
    speed: { from: 0 },
    ratio: { above: 0 },
    lead: { above: 0 },
    lift: { from: 0 },
    screwTeeth: { from: 10, whole: true },
    pitch: { above: 0 },
  },
  compute: ({ speed, ratio, lead, lift, screwTeeth, pitch }) => ({
    screw: (60 * speed) / lead,
    motor: ((60 * speed) / lead) * ratio,
    travel: (lift / lead) * screwTeeth * pitch,
  }),
});
