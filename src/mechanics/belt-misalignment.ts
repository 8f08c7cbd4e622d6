import { bounded } from "./bounded.ts";

/** How far a span runs out of its plane: the angle, and the difference of planes that the flanges still guide. */
export const beltMisalignment = bounded({
  name: "belt-misalignment",
  title: "Misalignment of a belt span",
  inputs: {
    difference: { symbol: "dz", unit: "mm", meaning: "difference of the planes at the two ends" },
    span: { symbol: "l", unit: "mm", meaning: "length of the span" },
    groove: { symbol: "w_t", unit: "mm", meaning: "width between the flanges" },
    belt: { symbol: "w_b", unit: "mm", meaning: "belt width" },
  },
  results: {
    angle: { symbol: "phi", unit: "deg", meaning: "angle out of the plane; at most 0.25, better 0.125" },
    allowed: { symbol: "dz_max", unit: "mm", meaning: "largest difference that the flanges guide" },
    use: { symbol: "u", unit: "", meaning: "difference over the largest; at most 1, better 0.5" },
  },
  formulas: { angle: "atand(abs(dz) / l)", allowed: "(w_t - w_b) / 2", use: "abs(dz) / dz_max" },
  source: "belt-makers: alignment, 5 mm per metre",
  valid: "flanged pulleys at least 0.3 mm wider than the belt; narrower ones are refused",
  differs: ["0.25 deg by belt makers and 5 mm per metre, which is 0.29 deg: the lower is the limit of the checks"],
  examples: [
    {
      given: { difference: 0.25, span: 100, groove: 7, belt: 6 },
      gives: { angle: 0.1432, allowed: 0.5, use: 0.5 },
      within: 5e-4,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { span: { above: 0 }, groove: { above: 0 }, belt: { above: 0 } },
  compute: ({ difference, span, groove, belt }) => {
    if (groove < belt + 0.3 - 1e-9) return { refused: "the groove is less than 0.3 mm wider than the belt" };
    const allowed = (groove - belt) / 2;
    const off = Math.abs(difference);
    return { angle: (Math.atan(off / span) * 180) / Math.PI, allowed, use: off / allowed };
  },
});
