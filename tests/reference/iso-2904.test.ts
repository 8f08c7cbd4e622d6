import { describe, expect, it } from "vitest";
import { SCREWS } from "../../src/catalogue/screws.ts";
import { row } from "../../src/core/table.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 2904:1977 on a handbook site, and two screw makers' tables",
  from: "seen",
  columns: ["diameter", "pitch", "starts", "lead", "pitchDiameter", "rootDiameter"],
  rows: [
    ["Tr8x1.5", 8, 1.5, 1, 1.5, 7.25, 6.2],
    ["Tr10x2", 10, 2, 1, 2, 9, 7.5],
    ["Tr10x3", 10, 3, 1, 3, 8.5, 6.5],
    ["Tr11x2", 11, 2, 1, 2, 10, 8.5],
    ["Tr12x2", 12, 2, 1, 2, 11, 9.5],
    ["Tr12x3", 12, 3, 1, 3, 10.5, 8.5],
    ["Tr14x2", 14, 2, 1, 2, 13, 11.5],
    ["Tr14x3", 14, 3, 1, 3, 12.5, 10.5],
    ["Tr14x4", 14, 4, 1, 4, 12, 9.5],
    ["Tr16x2", 16, 2, 1, 2, 15, 13.5],
    ["Tr16x4", 16, 4, 1, 4, 14, 11.5],
    ["Tr18x4", 18, 4, 1, 4, 16, 13.5],
    ["Tr20x4", 20, 4, 1, 4, 18, 15.5],
    ["Tr10x4(P2)", 10, 2, 2, 4, 9, 7.5],
    ["Tr12x6(P3)", 12, 3, 2, 6, 10.5, 8.5],
    ["Tr16x8(P4)", 16, 4, 2, 8, 14, 11.5],
  ],
} as const;

const REMEMBERED = {
  source: "common practice, by the formulas of ISO 2904",
  from: "memory",
  columns: ["diameter", "pitch", "starts", "lead", "pitchDiameter", "rootDiameter"],
  rows: [
    ["Tr8x2", 8, 2, 1, 2, 7, 5.5],
    ["Tr9x2", 9, 2, 1, 2, 8, 6.5],
    ["Tr10x1.5", 10, 1.5, 1, 1.5, 9.25, 8.2],
    ["Tr16x3", 16, 3, 1, 3, 14.5, 12.5],
    ["Tr8x4(P2)", 8, 2, 2, 4, 7, 5.5],
    ["Tr8x8(P2)", 8, 2, 4, 8, 7, 5.5],
    ["Tr8x10(P2)", 8, 2, 5, 10, 7, 5.5],
    ["Tr10x8(P2)", 10, 2, 4, 8, 9, 7.5],
    ["Tr12x8(P2)", 12, 2, 4, 8, 11, 9.5],
  ],
} as const;

agrees(SCREWS, SEEN);
agrees(SCREWS, REMEMBERED);

/** Clearance at the crest, a_c of ISO 2904: 0.15 for a pitch of 1.5, 0.25 for pitches from 2 to 5. */
const CREST = new Map([
  [1.5, 0.15],
  [2, 0.25],
  [3, 0.25],
  [4, 0.25],
]);

describe("the formulas of ISO 2904", () => {
  it.each(SCREWS.rows)("give the pitch diameter d - P/2 of $key", ({ values }) => {
    expect(values.pitchDiameter).toBeCloseTo(values.diameter - values.pitch / 2, 9);
  });

  it.each(SCREWS.rows)("give the root diameter d - P - 2 a_c of $key", ({ values }) => {
    const crest = CREST.get(values.pitch) ?? Number.NaN;
    expect(values.rootDiameter).toBeCloseTo(values.diameter - values.pitch - 2 * crest, 9);
  });
});

/** Largest outside and root diameter of class 7e, where both equal the basic size. */
const LIMITS_7E = [
  ["Tr8x1.5", 8, 6.2],
  ["Tr10x2", 10, 7.5],
  ["Tr10x3", 10, 6.5],
  ["Tr12x2", 12, 9.5],
  ["Tr12x3", 12, 8.5],
  ["Tr14x3", 14, 10.5],
  ["Tr14x4", 14, 9.5],
  ["Tr16x4", 16, 11.5],
  ["Tr18x4", 18, 13.5],
  ["Tr20x4", 20, 15.5],
] as const;

describe("ISO 2903, class 7e, as tabulated on a reference page and by two screw makers (seen)", () => {
  it.each(LIMITS_7E)("%s has its basic outside and root diameter as the largest", (key, outside, root) => {
    expect(row(SCREWS, key).values.diameter).toBe(outside);
    expect(row(SCREWS, key).values.rootDiameter).toBe(root);
  });
});
