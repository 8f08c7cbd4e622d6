import { bounded } from "./bounded.ts";

/** Load at which a slender column buckles, whatever its section. */
export const eulerLoad = bounded({
  name: "euler-load",
  title: "Buckling load of a slender column",
  inputs: {
    ends: {
      symbol: "C",
      unit: "",
      meaning: "end factor: 0.25 fixed-free, 1 pinned, 2 fixed-pinned, 4 fixed; design 1.2",
    },
    modulus: { symbol: "E", unit: "MPa", meaning: "elastic modulus" },
    inertia: { symbol: "I", unit: "mm4", meaning: "second moment of the section" },
    length: { symbol: "L", unit: "mm", meaning: "free length in compression" },
  },
  results: { load: { symbol: "P_cr", unit: "N", meaning: "buckling load" } },
  formulas: { load: "C * pi^2 * E * I / L^2" },
  source: "shigley: 4-12",
  valid: "straight column, central load, slender enough for the stress to stay below half the yield strength",
  examples: [
    {
      given: { ends: 1, modulus: 200000, inertia: 72993, length: 2700 },
      gives: { load: 19760 },
      within: 3e-4,
      source: "shigley: tube strut of a textbook problem, own result",
    },
    {
      given: { ends: 1, modulus: 200000, inertia: 3067961576, length: 20000 },
      gives: { load: 15140000 },
      within: 4e-4,
      source: "shigley: round column of a course problem, own result",
    },
  ],
  limits: { ends: { above: 0, to: 4 }, modulus: { above: 0 }, inertia: { above: 0 }, length: { above: 0 } },
  compute: ({ ends, modulus, inertia, length }) => ({
    load: (ends * Math.PI ** 2 * modulus * inertia) / length ** 2,
  }),
});
