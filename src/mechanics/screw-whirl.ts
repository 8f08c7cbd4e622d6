import { bounded } from "./bounded.ts";

/** Ends of a shaft: the factor of its buckling load and the root of its first bending frequency (key `blevins`). */
export const SHAFT_ENDS = {
  "fixed-free": { column: 0.25, whirl: 1.8751 },
  pinned: { column: 1, whirl: Math.PI },
  "fixed-pinned": { column: 2, whirl: 3.9266 },
  "fixed-fixed": { column: 4, whirl: 4.73 },
} as const;

/** Speed at which a lead screw whirls; stay below 80 % of it. */
export const screwWhirl = bounded({
  name: "screw-whirl",
  title: "Whirling speed of a lead screw",
  inputs: {
    ends: { symbol: "lambda", unit: "", meaning: "1.8751 fixed-free, 3.1416 pinned, 3.9266 fixed-pinned, 4.73 fixed" },
    length: { symbol: "L", unit: "mm", meaning: "longer free part on either side of the nut" },
    root: { symbol: "d_3", unit: "mm", meaning: "root diameter of the thread" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    density: { symbol: "rho", unit: "g/cm3", meaning: "density" },
  },
  results: {
    frequency: { symbol: "f", unit: "Hz", meaning: "first bending frequency" },
    speed: { symbol: "n", unit: "rpm", meaning: "whirling speed" },
  },
  formulas: {
    frequency: "(lambda / L)^2 * d_3 / 4 * sqrt(10^9 * E / rho) / (2 * pi)",
    speed: "60 * f",
  },
  source: "blevins: beams, first mode",
  valid: "straight round screw, root diameter all along",
  examples: [
    {
      given: { ends: Math.PI, length: 500, root: 5.5, modulus: 205000, density: 7.85 },
      gives: { speed: 2649 },
      within: 2e-4,
      source: "blevins: own arithmetic",
    },
    {
      given: { ends: 4.73, length: 2540, root: 25.4, modulus: 207000, density: 7.85 },
      gives: { frequency: 18 },
      within: 0.01,
      source: "machinerys-handbook: ball-screw maker's paper, both ends fixed",
    },
    {
      given: { ends: Math.PI, length: 2540, root: 25.4, modulus: 207000, density: 7.85 },
      gives: { frequency: 7.94 },
      within: 1e-3,
      source: "machinerys-handbook: ball-screw maker's paper, supported, 8 Hz",
    },
  ],
  limits: {
    ends: { above: 0, to: 5 },
    length: { above: 0 },
    root: { above: 0 },
    modulus: { above: 0 },
    density: { above: 0 },
  },
  compute: ({ ends, length, root, modulus, density }) => {
    const wave = Math.sqrt((1e9 * modulus) / density);
    const frequency = (((ends / length) ** 2 * root) / 4) * (wave / (2 * Math.PI));
    return { frequency, speed: 60 * frequency };
  },
});
