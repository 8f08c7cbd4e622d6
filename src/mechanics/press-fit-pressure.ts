import { bounded } from "./bounded.ts";

/** Pressure and hoop stress in a plastic boss round a pressed bearing, just after pressing. */
export const pressFitPressure = bounded({
  name: "press-fit-pressure",
  title: "Pressure and hoop stress of a press fit",
  inputs: {
    interference: { symbol: "i", unit: "mm", meaning: "interference on the diameter" },
    ring: { symbol: "D", unit: "mm", meaning: "outside diameter of the bearing" },
    boss: { symbol: "D_o", unit: "mm", meaning: "outside diameter of the boss" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus of the plastic" },
    poisson: { symbol: "nu", unit: "", meaning: "Poisson's ratio of the plastic" },
  },
  results: {
    shape: { symbol: "k", unit: "", meaning: "hoop stress over pressure" },
    pressure: { symbol: "p", unit: "MPa", meaning: "pressure on the ring" },
    hoop: { symbol: "sigma", unit: "MPa", meaning: "hoop stress at the bore" },
  },
  formulas: {
    shape: "(D_o^2 + D^2) / (D_o^2 - D^2)",
    pressure: "i * E / (D * (k + nu))",
    hoop: "p * k",
  },
  source: "shigley: 3-16, press and shrink fits",
  valid: "rigid ring, round boss, for a short time: plastic gives way and the pressure falls",
  examples: [
    {
      given: { interference: 0.1, ring: 22, boss: 30, modulus: 2000, poisson: 0.38 },
      gives: { pressure: 2.45, hoop: 8.2 },
      within: 6.1e-3,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    interference: { from: 0 },
    ring: { above: 0 },
    boss: { above: 0 },
    modulus: { above: 0 },
    poisson: { from: 0, to: 0.5 },
  },
  compute: ({ interference, ring, boss, modulus, poisson }) => {
    if (boss <= ring) return { refused: "the boss is not wider than the ring" };
    const shape = (boss ** 2 + ring ** 2) / (boss ** 2 - ring ** 2);
    const pressure = (interference * modulus) / (ring * (shape + poisson));
    return { shape, pressure, hoop: pressure * shape };
  },
});
