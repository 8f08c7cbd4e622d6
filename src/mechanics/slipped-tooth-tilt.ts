import { bounded } from "./bounded.ts";

/** Tilt of a stage on three screws when one of them has slipped by one belt tooth. */
export const slippedToothTilt = bounded({
  name: "slipped-tooth-tilt",
  title: "Tilt by one slipped tooth",
  inputs: {
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screw" },
    teeth: { symbol: "z_s", unit: "", meaning: "teeth of the screw's pulley" },
    height: { symbol: "h", unit: "mm", meaning: "distance of that screw from the line through the others" },
  },
  results: {
    rise: { symbol: "dz", unit: "mm", meaning: "height that the corner is off" },
    tilt: { symbol: "phi", unit: "deg", meaning: "tilt of the stage" },
  },
  formulas: { rise: "l / z_s", tilt: "atand(dz / h)" },
  source: "geometry",
  valid: "three screws, rigid stage",
  examples: [
    {
      given: { lead: 8, teeth: 40, height: 300 },
      gives: { rise: 0.2, tilt: 0.0382 },
      within: 1e-3,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { lead: { above: 0 }, teeth: { from: 10, whole: true }, height: { above: 0 } },
  compute: ({ lead, teeth, height }) => ({
    rise: lead / teeth,
    tilt: (Math.atan(lead / teeth / height) * 180) / Math.PI,
  }),
});
