import { describe, expect, it } from "vitest";
import { MOTORS } from "../../src/catalogue/motors.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "NEMA ICS 16-2001 mounting dimensions, as listed on a reference page in inches",
  from: "seen",
  columns: ["boltCircle", "pilotDiameter", "shaftDiameter"],
  rows: [
    ["NEMA 8", 22.6, 15, 4],
    ["NEMA 11", 32.5, 22, 5],
    ["NEMA 14", 36.8, 22, 5],
    ["NEMA 17", 43.84, 22, 5],
    ["NEMA 23", 66.68, 38.1, 6.35],
    ["NEMA 34", 98.43, 73.02, 9.53],
  ],
} as const;

agrees(MOTORS, SEEN);

const MAKER = {
  source: "a motor maker's data page, loads on the shaft",
  from: "seen",
  columns: ["radialLoad", "axialLoad"],
  rows: [["NEMA 17", 28, 10]],
} as const;

agrees(MOTORS, MAKER);

/** Bolt circles in inches, by the standard. */
const CIRCLES = [
  ["NEMA 23", 2.625],
  ["NEMA 34", 3.875],
] as const;

describe("bolt circles in inches (NEMA ICS 16-2001, seen) and the square they make", () => {
  it.each(CIRCLES)("%s: %d in", (key, inches) => {
    const motor = MOTORS.rows.find((each) => each.key === key);
    expect(Math.abs((motor?.values.boltCircle ?? 0) - inches * 25.4)).toBeLessThan(0.01);
    expect(Math.abs((motor?.values.boltSquare ?? 0) - (inches * 25.4) / Math.SQRT2)).toBeLessThan(0.02);
  });
});
