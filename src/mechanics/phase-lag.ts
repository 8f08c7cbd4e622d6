import { bounded } from "./bounded.ts";

/** How far a screw lags behind the other when its belt stretches under more torque: for information only. */
export const phaseLag = bounded({
  name: "phase-lag",
  title: "Lag of a screw by belt stretch",
  inputs: {
    torque: { symbol: "dT", unit: "N·mm", meaning: "difference of the torques of the two screws" },
    stiffness: { symbol: "k", unit: "N/mm", meaning: "stiffness of the span between them" },
    radius: { symbol: "r_p", unit: "mm", meaning: "pitch radius of the pulley" },
    lead: { symbol: "l", unit: "mm", meaning: "lead of the screws" },
  },
  results: {
    angle: { symbol: "phi", unit: "deg", meaning: "angle by which it lags" },
    lift: { symbol: "dz", unit: "mm", meaning: "height by which it lags" },
  },
  formulas: {
    angle: "dT / (k * r_p^2) * 180 / pi",
    lift: "l * phi / 360",
  },
  source: "statics",
  valid: "elastic belt that stays tight",
  examples: [
    {
      given: { torque: 100, stiffness: 50, radius: 12.732, lead: 8 },
      gives: { angle: 0.7069, lift: 0.01571 },
      within: 1e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { torque: { from: 0 }, stiffness: { above: 0 }, radius: { above: 0 }, lead: { above: 0 } },
  compute: ({ torque, stiffness, radius, lead }) => {
    const angle = ((torque / (stiffness * radius ** 2)) * 180) / Math.PI;
    return { angle, lift: (lead * angle) / 360 };
  },
});
