import { bounded } from "./bounded.ts";

/** Load at which a lead screw in compression buckles: Euler when slender, Johnson when stocky. */
export const screwColumn = bounded({
  name: "screw-column",
  title: "Buckling load of a lead screw",
  inputs: {
    ends: { symbol: "C", unit: "", meaning: "end factor: 0.25 fixed-free, 1 pinned; at most 1.2 in design" },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    yield: { symbol: "S_y", unit: "MPa", meaning: "yield strength; 300 unless known" },
    root: { symbol: "d_3", unit: "mm", meaning: "root diameter of the thread" },
    length: { symbol: "L", unit: "mm", meaning: "nut to thrust bearing at the worst stage height" },
  },
  results: {
    transition: { symbol: "L_t", unit: "mm", meaning: "length below which Johnson holds" },
    euler: { symbol: "P_E", unit: "N", meaning: "load by Euler" },
    johnson: { symbol: "P_J", unit: "N", meaning: "load by Johnson; holds below L_t only" },
    critical: { symbol: "P_cr", unit: "N", meaning: "buckling load" },
  },
  formulas: {
    transition: "d_3 / 4 * sqrt(2 * pi^2 * C * E / S_y)",
    euler: "C * pi^3 * E * d_3^4 / (64 * L^2)",
    johnson: "pi * d_3^2 / 4 * (S_y - (2 * S_y * L / (pi * d_3))^2 / (C * E))",
    critical: '"P_J when L is below L_t, else P_E"',
  },
  source: "shigley: 4-12 and 4-13",
  valid: "straight screw in compression, central load; a hung screw is in tension and cannot buckle",
  examples: [
    {
      given: { ends: 1, modulus: 205000, yield: 300, root: 5.5, length: 150 },
      gives: { transition: 159.7, euler: 4039, johnson: 3983, critical: 3983 },
      within: 4e-4,
      source: "shigley: own arithmetic",
    },
    {
      given: { ends: 1, modulus: 205000, yield: 300, root: 5.5, length: 800 },
      gives: { critical: 142 },
      within: 3e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    ends: { above: 0, to: 4 },
    modulus: { above: 0 },
    yield: { above: 0 },
    root: { above: 0 },
    length: { above: 0 },
  },
  compute: ({ ends, modulus, yield: strength, root, length }) => {
    const transition = (root / 4) * Math.sqrt((2 * Math.PI ** 2 * ends * modulus) / strength);
    const euler = (ends * Math.PI ** 3 * modulus * root ** 4) / (64 * length ** 2);
    const squeeze = ((2 * strength * length) / (Math.PI * root)) ** 2 / (ends * modulus);
    const johnson = ((Math.PI * root ** 2) / 4) * (strength - squeeze);
    return { transition, euler, johnson, critical: length < transition ? johnson : euler };
  },
});
