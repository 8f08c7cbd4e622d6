import { describe, expect, it } from "vitest";
import { POLYMERS } from "../../src/catalogue/polymers.ts";
import { findRow } from "../../src/core/table.ts";
import { MATERIALS } from "../../src/printing/materials.ts";
import { agrees } from "./agrees.ts";

const STRENGTH = {
  source: "data sheets, databases and a property library of printed polymers; some ends from memory",
  from: "memory",
  columns: [
    "densityLow",
    "densityHigh",
    "modulusLow",
    "modulusHigh",
    "strengthLow",
    "strengthHigh",
    "acrossLow",
    "acrossHigh",
  ],
  rows: [
    ["PLA", 1.22, 1.31, 2000, 4000, 23, 65, 12, 45],
    ["PETG", 1.25, 1.29, 2000, 3000, 44, 56, 25, 38],
    ["ABS", 1.02, 1.08, 2000, 2900, 30, 50, 15, 28],
    ["ASA", 1.05, 1.07, 1900, 2600, 35, 54, 18, 30],
    ["PC", 1.18, 1.22, 2000, 3000, 58, 75, 35, 52],
    ["PA12", 1.01, 1.02, 1200, 1800, 40, 50, 35, 48],
    ["PA12-CF", 1.1, 1.1, 5000, 6000, 58, 72, 46, 58],
    ["PA6-CF", 1.15, 1.2, 5000, 9000, 80, 110, 30, 45],
  ],
} as const;

const HEAT = {
  source: "data sheets, databases and a property library of printed polymers; some ends from memory",
  from: "memory",
  columns: [
    "softensLow",
    "softensHigh",
    "glassLow",
    "expansionLow",
    "expansionHigh",
    "specificHeat",
    "conductivityLow",
    "shrinkLow",
    "shrinkHigh",
  ],
  rows: [
    ["PLA", 52, 65, 53, 68, 101, 1800, 0.13, 0.2, 0.4],
    ["PETG", 65, 75, 75, 68, 68, 1200, 0.29, 0.2, 0.5],
    ["ABS", 77, 113, 105, 81, 94, 1400, 0.19, 0.5, 0.8],
    ["ASA", 86, 106, 98, 80, 110, 1300, 0.17, 0.4, 0.7],
    ["PC", 125, 140, 140, 65, 70, 1200, 0.2, 0.5, 0.7],
    ["PA12", 115, 150, 40, 100, 120, 2000, 0.23, 0.8, 1.5],
    ["PA12-CF", 150, 175, 40, 30, 60, 1700, 0.4, 0.2, 0.5],
    ["PA6-CF", 180, 215, 50, 20, 60, 1700, 0.4, 0.2, 0.5],
  ],
} as const;

agrees(POLYMERS, STRENGTH);
agrees(POLYMERS, HEAT);

describe("what a part may bear for years", () => {
  const both = MATERIALS.rows.flatMap(({ key, values }) => {
    const sheet = findRow(POLYMERS, key === "PA-CF" ? "PA12-CF" : key);
    return sheet === undefined ? [] : [{ key, values, sheet: sheet.values }];
  });

  it("is compared for every printing material", () => {
    expect(both.length).toBe(MATERIALS.rows.length);
  });

  it.each(both)("$key: half of the short-time strength at most, and no warmer than the sheets allow", (material) => {
    const { values, sheet } = material;
    expect(values.inLayer).toBeLessThanOrEqual(0.5 * sheet.strengthLow);
    expect(values.acrossLayers).toBeLessThanOrEqual(0.5 * sheet.acrossLow);
    expect(values.serviceLimit).toBeLessThanOrEqual(sheet.serviceLimit);
    expect(values.serviceLimit).toBeLessThanOrEqual(sheet.softensLow - 15);
    expect(values.modulus).toBeLessThanOrEqual(sheet.modulusHigh);
    expect(values.density).toBeGreaterThanOrEqual(sheet.densityLow);
    expect(values.density).toBeLessThanOrEqual(sheet.densityHigh);
  });
});
