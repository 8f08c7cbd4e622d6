import { bounded } from "./bounded.ts";

/** Mass of a rectangular plate. */
export const plateMass = bounded({
  name: "plate-mass",
  title: "Mass of a plate",
  inputs: {
    length: { symbol: "L", unit: "mm", meaning: "length" },
    width: { symbol: "W", unit: "mm", meaning: "width" },
    thickness: { symbol: "t", unit: "mm", meaning: "thickness" },
    density: { symbol: "rho", unit: "g/cm3", meaning: "density" },
  },
  results: { mass: { symbol: "m", unit: "kg", meaning: "mass" } },
  formulas: { mass: "L * W * t * rho / 10^6" },
  source: "geometry",
  valid: "solid plate; holes are left out, which is little and on the safe side",
  examples: [
    {
      given: { length: 457.2, width: 457.2, thickness: 6.35, density: 2.7 },
      gives: { mass: 3.584 },
      within: 2e-4,
      source: "geometry: own arithmetic",
    },
    {
      given: { length: 300, width: 300, thickness: 6, density: 2.7 },
      gives: { mass: 1.458 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { length: { above: 0 }, width: { above: 0 }, thickness: { above: 0 }, density: { above: 0 } },
  compute: ({ length, width, thickness, density }) => ({ mass: (length * width * thickness * density) / 1e6 }),
});
