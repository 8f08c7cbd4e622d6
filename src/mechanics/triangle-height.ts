import { bounded } from "./bounded.ts";

/** Longest side and smallest height of a triangle from its sides: how far three screws are from standing in line. */
export const triangleHeight = bounded({
  name: "triangle-height",
  title: "Smallest height of a screw triangle",
  inputs: {
    a: { symbol: "a", unit: "mm", meaning: "one side" },
    b: { symbol: "b", unit: "mm", meaning: "another side" },
    c: { symbol: "c", unit: "mm", meaning: "the third side" },
  },
  results: {
    longest: { symbol: "L", unit: "mm", meaning: "longest side" },
    height: { symbol: "h", unit: "mm", meaning: "height over the longest side, the smallest of the three" },
  },
  formulas: {
    longest: "max(a, b, c)",
    height: "sqrt((a + b + c) * (b + c - a) * (a + c - b) * (a + b - c)) / (2 * L)",
  },
  source: "geometry",
  valid: "sides that close a triangle; others are refused",
  examples: [
    {
      given: { a: 300, b: 400, c: 500 },
      gives: { longest: 500, height: 240 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { a: { above: 0 }, b: { above: 0 }, c: { above: 0 } },
  compute: ({ a, b, c }) => {
    const longest = Math.max(a, b, c);
    const product = (a + b + c) * (b + c - a) * (a + c - b) * (a + b - c);
    if (!(product >= 0)) return { refused: "the sides do not close a triangle" };
    return { longest, height: Math.sqrt(product) / (2 * longest) };
  },
});
