import { bounded } from "./bounded.ts";

/** Length, span and wraps of a belt round two pulleys; exact, and by the handbook's short form. */
export const twoPulleyLoop = bounded({
  name: "two-pulley-loop",
  title: "Belt length on two pulleys",
  inputs: {
    large: { symbol: "R", unit: "mm", meaning: "pitch radius of the larger pulley" },
    small: { symbol: "r", unit: "mm", meaning: "pitch radius of the smaller pulley" },
    centres: { symbol: "C", unit: "mm", meaning: "centre distance" },
  },
  results: {
    angle: { symbol: "beta", unit: "deg", meaning: "half the angle between the spans" },
    span: { symbol: "l", unit: "mm", meaning: "length of a span" },
    smallWrap: { symbol: "w", unit: "deg", meaning: "wrap on the smaller pulley" },
    length: { symbol: "L", unit: "mm", meaning: "belt length" },
    approximate: { symbol: "L_approx", unit: "mm", meaning: "belt length by the short form; not for choosing a loop" },
  },
  formulas: {
    angle: "asind((R - r) / C)",
    span: "sqrt(C^2 - (R - r)^2)",
    smallWrap: "180 - 2 * beta",
    length: "2 * l + r * pi * (1 - beta / 90) + R * pi * (1 + beta / 90)",
    approximate: "2 * C + pi * (R + r) + (R - r)^2 / C",
  },
  source: "shigley: 17-1",
  valid: "open belt, R at least r, pulleys that do not overlap",
  examples: [
    {
      given: { large: 60 / Math.PI, small: 20 / Math.PI, centres: 100 },
      gives: { length: 281.623, approximate: 281.621 },
      within: 2e-6,
      source: "belt-makers: length formulas, own numbers",
    },
    {
      given: { large: 40 / Math.PI, small: 20 / Math.PI, centres: 200 },
      gives: { length: 460.2027, span: 199.8987, smallWrap: 176.3518 },
      within: 3e-7,
      source: "shigley: own arithmetic",
    },
  ],
  limits: { large: { above: 0 }, small: { above: 0 }, centres: { above: 0 } },
  compute: ({ large, small, centres }) => {
    if (small > large) return { refused: "r is above R" };
    if (centres <= large + small) return { refused: "the pulleys overlap" };
    const sine = (large - small) / centres;
    const beta = Math.asin(sine);
    const span = centres * Math.sqrt((1 - sine) * (1 + sine));
    return {
      angle: (beta * 180) / Math.PI,
      span,
      smallWrap: 180 - (beta * 360) / Math.PI,
      length: 2 * span + small * (Math.PI - 2 * beta) + large * (Math.PI + 2 * beta),
      approximate: 2 * centres + Math.PI * (large + small) + (large - small) ** 2 / centres,
    };
  },
});
