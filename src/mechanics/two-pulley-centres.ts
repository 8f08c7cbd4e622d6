import { isRefusal } from "../core/calculation.ts";
import { bisect } from "./bisect.ts";
import { bounded } from "./bounded.ts";
import { twoPulleyLoop } from "./two-pulley-loop.ts";

/** Centre distance at which a belt of given length is taut on two pulleys; exact, and by the handbook's short form. */
export const twoPulleyCentres = bounded({
  name: "two-pulley-centres",
  title: "Centre distance from a belt length",
  inputs: {
    large: { symbol: "R", unit: "mm", meaning: "pitch radius of the larger pulley" },
    small: { symbol: "r", unit: "mm", meaning: "pitch radius of the smaller pulley" },
    length: { symbol: "L", unit: "mm", meaning: "belt length" },
  },
  results: {
    centres: { symbol: "C", unit: "mm", meaning: "centre distance" },
    approximate: { symbol: "C_approx", unit: "mm", meaning: "centre distance by the short form" },
  },
  formulas: {
    centres: '"the C at which two-pulley-loop gives L, by bisection"',
    approximate: "(L - pi * (R + r) + sqrt((L - pi * (R + r))^2 - 8 * (R - r)^2)) / 4",
  },
  source: "shigley: 17-1",
  valid: "open belt, R at least r; a belt too short for pulleys that do not overlap is refused",
  examples: [
    {
      given: { large: 60 / Math.PI, small: 20 / Math.PI, length: 280 },
      gives: { centres: 99.1816 },
      within: 6e-7,
      source: "belt-makers: own arithmetic",
    },
    {
      given: { large: 60 / Math.PI, small: 20 / Math.PI, length: 280 },
      gives: { approximate: 99.183 },
      within: 1e-5,
      source: "belt-makers: centre distance formula, own numbers",
    },
  ],
  limits: { large: { above: 0 }, small: { above: 0 }, length: { above: 0 } },
  compute: ({ large, small, length }) => {
    if (small > large) return { refused: "r is above R" };
    const over = (centres: number) => {
      const loop = twoPulleyLoop.compute({ large, small, centres });
      return isRefusal(loop) ? Number.NaN : loop.length - length;
    };
    const nearest = (large + small) * (1 + 1e-12);
    const centres = bisect(over, nearest, Math.max(length / 2, nearest));
    if (centres === undefined) return { refused: "the belt is too short for these pulleys" };
    const free = length - Math.PI * (large + small);
    return { centres, approximate: (free + Math.sqrt(free ** 2 - 8 * (large - small) ** 2)) / 4 };
  },
});
