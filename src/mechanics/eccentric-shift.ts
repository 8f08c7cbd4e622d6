import { bounded } from "./bounded.ts";

/** Shift of a wheel when its eccentric is turned from its middle, and what the next degree adds. */
export const eccentricShift = bounded({
  name: "eccentric-shift",
  title: "Shift of an eccentric",
  inputs: {
    offset: { symbol: "epsilon", unit: "mm", meaning: "offset of the eccentric" },
    angle: { symbol: "phi", unit: "deg", meaning: "turn from the middle, where the wheel neither presses nor clears" },
  },
  results: {
    shift: { symbol: "s", unit: "mm", meaning: "shift towards the bar" },
    perDegree: { symbol: "q", unit: "mm", meaning: "shift that one more degree adds" },
  },
  formulas: { shift: "epsilon * sind(phi)", perDegree: "epsilon * cosd(phi) * pi / 180" },
  source: "geometry",
  valid: "turns up to 90 deg either way, the whole range of an eccentric",
  examples: [
    {
      given: { offset: 0.79, angle: 0 },
      gives: { shift: 0, perDegree: 0.013788 },
      within: 1e-4,
      source: "geometry: own arithmetic",
    },
    {
      given: { offset: 0.79, angle: 30 },
      gives: { shift: 0.395 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { offset: { above: 0 }, angle: { from: -90, to: 90 } },
  compute: ({ offset, angle }) => {
    const radians = (angle * Math.PI) / 180;
    return { shift: offset * Math.sin(radians), perDegree: (offset * Math.cos(radians) * Math.PI) / 180 };
  },
});
