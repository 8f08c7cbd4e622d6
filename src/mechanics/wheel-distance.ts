import { bounded } from "./bounded.ts";

/** Axis distance of two wheels pressed on a bar, from a caliper reading over them or from the bar and the wheel. */
export const wheelDistance = bounded({
  name: "wheel-distance",
  title: "Axis distance of two wheels on a bar",
  inputs: {
    over: { symbol: "M", unit: "mm", meaning: "caliper reading over both wheels" },
    diameter: { symbol: "OD", unit: "mm", meaning: "outside diameter of a wheel" },
    bar: { symbol: "W_e", unit: "mm", meaning: "bar width across the wheels" },
  },
  results: {
    axes: { symbol: "C", unit: "mm", meaning: "distance of the axes" },
    offset: { symbol: "o_w", unit: "mm", meaning: "axle to the face of the bar" },
  },
  formulas: { axes: "M - OD", offset: "(C - W_e) / 2" },
  source: "geometry",
  valid: "wheels of one size; a reading that puts the axles inside the bar is refused",
  examples: [
    {
      given: { over: 63.6, diameter: 23.9, bar: 20 },
      gives: { axes: 39.7, offset: 9.85 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { over: { above: 0 }, diameter: { above: 0 }, bar: { above: 0 } },
  compute: ({ over, diameter, bar }) => {
    const axes = over - diameter;
    if (axes <= bar) return { refused: "the axles would stand inside the bar: measure over the wheels again" };
    return { axes, offset: (axes - bar) / 2 };
  },
});
