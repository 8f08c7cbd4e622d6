import { bounded } from "./bounded.ts";

/** How far a flat of the polygon may lie inside its circle, in mm. */
const CHORD = 0.01;

/** Polygon of an upright hole whose flats touch the circle that is wanted, the measured shrink added. */
export const printedHole = bounded({
  name: "printed-hole",
  title: "Polygon of an upright printed hole",
  inputs: {
    wanted: { symbol: "d", unit: "mm", meaning: "diameter the print should have" },
    shrink: { symbol: "s_v", unit: "mm", meaning: "how much holes of this printer come out small" },
  },
  results: {
    sides: { symbol: "N", unit: "", meaning: "sides of the polygon" },
    corners: { symbol: "d_N", unit: "mm", meaning: "diameter through its corners" },
    lost: { symbol: "q", unit: "mm", meaning: "what would be lost if the corners lay on the circle" },
  },
  formulas: {
    sides: '"the smallest multiple of 4, at least 24, whose flats bulge by 0.01 mm at most"',
    corners: "(d + s_v) / cosd(180 / N)",
    lost: "(d + s_v) * (1 - cosd(180 / N))",
  },
  source: "geometry",
  valid: "hole radius at least 0.5 mm, shrink -0.1 to 0.6 mm; outside it refuses",
  examples: [
    {
      given: { wanted: 22.3, shrink: 0 },
      gives: { sides: 76, corners: 22.3191 },
      within: 3e-6,
      source: "geometry: own arithmetic",
    },
    {
      given: { wanted: 22.3, shrink: 0.2 },
      gives: { sides: 76, corners: 22.5192 },
      within: 3e-6,
      source: "geometry: own arithmetic",
    },
    {
      given: { wanted: 22.12, shrink: 0.2 },
      gives: { sides: 76, corners: 22.3391 },
      within: 3e-6,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { wanted: { from: 1 }, shrink: { from: -0.1, to: 0.6 } },
  compute: ({ wanted, shrink }) => {
    const drawn = wanted + shrink;
    const needed = Math.PI / Math.acos(1 - CHORD / (drawn / 2));
    const sides = Math.max(24, 4 * Math.ceil(needed / 4 - 1e-9));
    const cos = Math.cos(Math.PI / sides);
    return { sides, corners: drawn / cos, lost: drawn * (1 - cos) };
  },
});
