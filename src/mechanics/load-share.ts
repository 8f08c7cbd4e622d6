import { type Refusal, refuse } from "../core/calculation.ts";
import { bounded, brief } from "./bounded.ts";

/** Smallest height of the triangle, as a share of its longest side. */
const LEAST_HEIGHT = 0.05;

/**
 * Load on each of three screws under a weight anywhere in plan. A negative load means that the stage lifts off that
 * screw, or hangs on its nut.
 */
export const loadShare = bounded({
  name: "load-share",
  title: "Load on three screws",
  inputs: {
    weight: { symbol: "W", unit: "N", meaning: "weight of all masses" },
    x: { symbol: "x", unit: "mm", meaning: "centre of mass" },
    y: { symbol: "y", unit: "mm", meaning: "centre of mass" },
    xA: { symbol: "x_A", unit: "mm", meaning: "screw A" },
    yA: { symbol: "y_A", unit: "mm", meaning: "screw A" },
    xB: { symbol: "x_B", unit: "mm", meaning: "screw B" },
    yB: { symbol: "y_B", unit: "mm", meaning: "screw B" },
    xC: { symbol: "x_C", unit: "mm", meaning: "screw C" },
    yC: { symbol: "y_C", unit: "mm", meaning: "screw C" },
  },
  results: {
    area: { symbol: "Delta", unit: "mm2", meaning: "twice the signed area of the triangle" },
    onA: { symbol: "F_A", unit: "N", meaning: "load on screw A" },
    onB: { symbol: "F_B", unit: "N", meaning: "load on screw B" },
    onC: { symbol: "F_C", unit: "N", meaning: "load on screw C" },
  },
  formulas: {
    area: "(y_B - y_C) * (x_A - x_C) + (x_C - x_B) * (y_A - y_C)",
    onA: "W * ((y_B - y_C) * (x - x_C) + (x_C - x_B) * (y - y_C)) / Delta",
    onB: "W * ((y_C - y_A) * (x - x_C) + (x_A - x_C) * (y - y_C)) / Delta",
    onC: "W - F_A - F_B",
  },
  source: "statics",
  valid:
    "rigid stage, vertical loads; screws nearly in line (smallest height below 5 % of the longest side) are refused",
  examples: [
    {
      given: { weight: 30, x: 150, y: 260 / 3, xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 260 },
      gives: { onA: 10, onB: 10, onC: 10 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
    {
      given: { weight: 30, x: 75, y: 60, xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 260 },
      gives: { onA: 19.04, onB: 4.04, onC: 6.92 },
      within: 1e-3,
      source: "statics: own arithmetic",
    },
    {
      given: { weight: 30, x: 20, y: 120, xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 260 },
      gives: { onA: 21.08, onB: -4.92, onC: 13.85 },
      within: 8e-4,
      source: "statics: own arithmetic",
    },
  ],
  limits: { weight: { above: 0 } },
  compute: ({ weight, x, y, xA, yA, xB, yB, xC, yC }) => {
    const area = (yB - yC) * (xA - xC) + (xC - xB) * (yA - yC);
    const longest = Math.max(Math.hypot(xA - xB, yA - yB), Math.hypot(xB - xC, yB - yC), Math.hypot(xC - xA, yC - yA));
    if (!(Math.abs(area) >= LEAST_HEIGHT * longest * longest && longest > 0)) {
      return inLine(Math.abs(area) / longest, longest);
    }
    const onA = (weight * ((yB - yC) * (x - xC) + (xC - xB) * (y - yC))) / area;
    const onB = (weight * ((yC - yA) * (x - xC) + (xA - xC) * (y - yC))) / area;
    return { area, onA, onB, onC: weight - onA - onB };
  },
});

function inLine(height: number, longest: number): Refusal {
  if (!(height >= 0))
    return { refused: "the three screws stand nearly in line: they share a place, or none is a place" };
  const least = LEAST_HEIGHT * longest;
  return refuse({
    name: "screws-in-line",
    says: `the three screws stand nearly in line: ${brief(height)} mm across on ${brief(longest)} mm, under 5 %`,
    found: { value: height, unit: "mm" },
    limit: { value: least, unit: "mm" },
    set: `one screw at least ${brief(least)} mm beside the line of the others`,
  });
}
