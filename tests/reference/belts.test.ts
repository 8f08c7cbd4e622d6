import { describe, expect, it } from "vitest";
import { BELT_TENSIONS } from "../../src/catalogue/belt-tensions.ts";
import { BELTS } from "../../src/catalogue/belts.ts";
import { row } from "../../src/core/table.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "a belt maker's design handbook, figures of the profiles",
  from: "seen",
  columns: ["pitch", "thickness", "toothHeight"],
  rows: [
    ["3 mm round", 3, 2.41, 1.22],
    ["5 mm round", 5, 3.81, 2.08],
    ["T2.5", 2.5, 1.3, 0.7],
    ["T5", 5, 2.2, 1.2],
    ["XL", 5.08, 2.3, 1.27],
  ],
} as const;

agrees(BELTS, SEEN);

const INCH = {
  source: "ISO 5296; the handbook has the pitch and the thickness, and prints the tooth as 0.46",
  from: "memory",
  columns: ["pitch", "thickness", "toothHeight"],
  rows: [["MXL", 2.032, 1.14, 0.51]],
} as const;

agrees(BELTS, INCH);

describe("the 2 mm belt", () => {
  it("is listed as it is sold, and warns of the thicker handbook figure 1.52 (seen)", () => {
    const { values, differs } = row(BELTS, "2 mm round");
    expect([values.pitch, values.thickness, values.toothHeight, values.pitchLineDistance]).toEqual([
      2, 1.38, 0.75, 0.254,
    ]);
    expect(differs?.find(({ field }) => field === "thickness")?.others).toContain(1.52);
  });

  it("has a pitch line that the handbook's pulleys share: (pitch diameter - outside)/2 = 0.254 (memory)", () => {
    expect(((20 * 2) / Math.PI - 12.224) / 2).toBeCloseTo(row(BELTS, "2 mm round").values.pitchLineDistance, 3);
  });
});

/** Profile, allowable tension in lbf for 1 in of width. */
const INCH_TABLE = [
  ["2 mm G", 25],
  ["3 mm G", 114],
  ["3 mm H", 64],
  ["5 mm H", 102],
  ["T2.5", 70],
  ["T5", 209],
] as const;

describe("a belt maker's table of working tension, in lbf for 1 in of width (seen)", () => {
  it.each(INCH_TABLE)("%s: %d", (profile, pounds) => {
    const rows = BELT_TENSIONS.rows.filter(({ key }) => key.startsWith(`${profile} x`));
    expect(rows.length).toBeGreaterThan(1);
    for (const { values } of rows) {
      // The maker's own newton column is rounded, T2.5 up from 311.4 to 312.
      expect(Math.abs(values.rating - pounds * 4.44822)).toBeLessThan(0.7);
      expect(Math.abs(values.allowable - (values.rating * values.width) / 25.4)).toBeLessThan(0.051);
    }
  });

  it("is what one mm of width of the same belt may carry, at most", () => {
    const perWidth = (key: string) => row(BELTS, key).values.workTension;
    const rated = (pounds: number) => (pounds * 4.44822) / 25.4;
    expect(perWidth("2 mm round")).toBeCloseTo(rated(25), 2);
    expect(perWidth("3 mm round")).toBeCloseTo(rated(64), 1);
    expect(perWidth("5 mm round")).toBeCloseTo(rated(102), 1);
    expect(perWidth("T2.5")).toBeCloseTo(rated(70), 1);
    expect(perWidth("T5")).toBeCloseTo(rated(209), 1);
    expect(perWidth("MXL")).toBeCloseTo(rated(32), 1);
    expect(perWidth("XL")).toBeCloseTo(rated(41), 1);
  });
});
