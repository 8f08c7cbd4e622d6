import { describe, expect, it } from "vitest";
import { SHIM_RINGS } from "../../src/catalogue/shim-rings.ts";

/** Bore and outside diameter of DIN 988. From memory; 5 x 10 x 1 stood in a machine maker's parts table (seen). */
const SIZES = [
  [3, 6],
  [4, 8],
  [5, 10],
  [6, 12],
  [7, 13],
  [8, 14],
  [9, 15],
  [10, 16],
  [11, 17],
  [12, 18],
  [13, 19],
  [14, 20],
  [15, 21],
  [16, 22],
  [17, 24],
  [18, 25],
  [20, 28],
  [22, 30],
  [25, 35],
] as const;

const THICKNESSES = [0.1, 0.15, 0.2, 0.3, 0.5, 1] as const;

describe("DIN 988 (memory)", () => {
  const standard = SHIM_RINGS.rows.filter(({ source }) => source === "din-988");

  it.each(SIZES)("has rings %d x %d in six thicknesses", (hole, outside) => {
    const rings = standard.filter(({ values }) => values.hole === hole);
    expect(rings.map(({ values }) => values.outside)).toEqual(THICKNESSES.map(() => outside));
    expect(rings.map(({ values }) => values.thickness)).toEqual([...THICKNESSES]);
  });

  it("has no ring of another size", () => {
    expect(standard.length).toBe(SIZES.length * THICKNESSES.length);
  });
});

/** Rings of DIN 988 and how far each reaches past a bearing's inner land, on the diameter; lands mostly estimates. */
const REACH = [
  ["608", 8, 14, 1.9],
  ["688", 8, 14, 3.6],
  ["625", 5, 10, 1.7],
  ["6000", 10, 16, 1.2],
  ["6001", 12, 18, 1.2],
  ["6002", 15, 21, 0.5],
] as const;

describe("the rings' reach over the shield (computed from the lands)", () => {
  it.each(REACH)("is told to whoever takes a %s with %d x %d", (bearing, hole, outside) => {
    const rings = SHIM_RINGS.rows.filter(({ values, source }) => {
      return source === "din-988" && values.hole === hole && values.outside === outside;
    });
    expect(rings.length).toBe(6);
    expect(rings.filter(({ note }) => !note?.includes(bearing))).toEqual([]);
  });
});
