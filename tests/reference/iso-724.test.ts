import { describe, expect, it } from "vitest";
import { THREADS } from "../../src/catalogue/threads.ts";
import { findRow } from "../../src/core/table.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 261 and ISO 724, as tabulated by a tap maker",
  from: "seen",
  columns: ["diameter", "pitch", "minorDiameter"],
  rows: [
    ["M2", 2, 0.4, 1.509],
    ["M2.5", 2.5, 0.45, 1.948],
    ["M3", 3, 0.5, 2.387],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the root diameter of M4, not pi
    ["M4", 4, 0.7, 3.141],
    ["M5", 5, 0.8, 4.019],
    ["M6", 6, 1, 4.773],
    ["M8", 8, 1.25, 6.466],
    ["M10", 10, 1.5, 8.16],
    ["M12", 12, 1.75, 9.853],
    ["M14", 14, 2, 11.546],
    ["M16", 16, 2, 13.546],
  ],
} as const;

agrees(THREADS, SEEN);

/** Diameter, pitch, d2, d3 and D1 of the same page, then the stress area of ISO 898-1 in mm2, which is from memory. */
const PAGE = [
  ["M2", 2, 0.4, 1.74, 1.509, 1.567, 2.07],
  ["M2.5", 2.5, 0.45, 2.208, 1.948, 2.013, 3.39],
  ["M3", 3, 0.5, 2.675, 2.387, 2.459, 5.03],
  ["M3.5", 3.5, 0.6, 3.11, 2.764, 2.85, 6.78],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the root diameter of M4, not pi
  ["M4", 4, 0.7, 3.545, 3.141, 3.242, 8.78],
  ["M5", 5, 0.8, 4.48, 4.019, 4.134, 14.2],
  ["M6", 6, 1, 5.35, 4.773, 4.917, 20.1],
  ["M7", 7, 1, 6.35, 5.773, 5.917, 28.9],
  ["M8", 8, 1.25, 7.188, 6.466, 6.647, 36.6],
  ["M10", 10, 1.5, 9.026, 8.16, 8.376, 58],
  ["M12", 12, 1.75, 10.863, 9.853, 10.106, 84.3],
  ["M14", 14, 2, 12.701, 11.546, 11.835, 115],
  ["M16", 16, 2, 14.701, 13.546, 13.835, 157],
] as const;

describe("the profile of ISO 68-1, H = P sqrt(3)/2, against ISO 724 (seen)", () => {
  it.each(PAGE)("%s has d2 = d - 3/4 H, d3 = d - 17/12 H, D1 = d - 5/4 H", (_thread, d, pitch, d2, d3, D1) => {
    const height = (pitch * Math.sqrt(3)) / 2;
    expect(Math.abs(d - 0.75 * height - d2)).toBeLessThan(6e-4);
    expect(Math.abs(d - (17 / 12) * height - d3)).toBeLessThan(6e-4);
    expect(Math.abs(d - 1.25 * height - D1)).toBeLessThan(6e-4);
  });
});

describe("the root diameters of the catalogue against two standards", () => {
  const known = PAGE.flatMap(([thread, , , d2, , D1, area]) => {
    const found = findRow(THREADS, thread);
    return found === undefined ? [] : [{ thread, d2, D1, area, values: found.values }];
  });

  it("covers all threads of the catalogue", () => {
    expect(known.map(({ thread }) => thread)).toEqual(THREADS.rows.map(({ key }) => key));
  });

  it.each(known)("$thread has the profile's root, d - 17/12 H (ISO 68-1)", ({ values }) => {
    const height = (values.pitch * Math.sqrt(3)) / 2;
    expect(Math.abs(values.diameter - (17 / 12) * height - values.minorDiameter)).toBeLessThan(6e-4);
  });

  it.each(known)("$thread has the stress area of ISO 898-1, $area mm2 (memory)", ({ d2, area, values }) => {
    const computed = (Math.PI / 4) * ((d2 + values.minorDiameter) / 2) ** 2;
    expect(Math.abs(computed - area)).toBeLessThan(0.006 * area);
  });

  it.each(known)("$thread is drilled above its smallest inner diameter D1 (ISO 724, seen)", ({ D1, values }) => {
    expect(values.tapDrill).toBeGreaterThan(D1);
    expect(Math.abs(values.tapDrill - (values.diameter - values.pitch))).toBeLessThanOrEqual(0.051);
  });
});
