import { describe, expect, it } from "vitest";
import { FITS } from "../../src/catalogue/fits.ts";

/** Nominal size, class, lower and upper deviation in micrometres. */
const SEEN = [
  [5, "H7", 0, 12],
  [5, "g6", -12, -4],
  [5, "h6", -8, 0],
  [5, "p6", 12, 20],
  [8, "H7", 0, 15],
  [8, "g6", -14, -5],
  [8, "h6", -9, 0],
  [8, "p6", 15, 24],
  [10, "H7", 0, 15],
  [10, "g6", -14, -5],
  [10, "h6", -9, 0],
  [10, "p6", 15, 24],
  [16, "H7", 0, 18],
  [16, "g6", -17, -6],
  [16, "h6", -11, 0],
  [16, "p6", 18, 29],
  [22, "H7", 0, 21],
  [22, "g6", -20, -7],
  [22, "h6", -13, 0],
  [22, "p6", 22, 35],
  [26, "H7", 0, 21],
  [26, "g6", -20, -7],
  [26, "h6", -13, 0],
  [26, "p6", 22, 35],
] as const;

describe("ISO 286-2, H7 from two tables, g6 h6 p6 from a JIS B 0401 table that is identical (seen)", () => {
  it.each(SEEN)("%d %s lies %d to %d micrometres from the nominal", (nominal, tolerance, lower, upper) => {
    const rows = FITS.rows.filter(({ key, values }) => {
      return key.startsWith(tolerance) && values.over < nominal && nominal <= values.upTo;
    });
    expect(rows.map(({ values }) => [values.lower, values.upper])).toEqual([[lower / 1000, upper / 1000]]);
  });
});
