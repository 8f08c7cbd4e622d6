import { describe, expect, it } from "vitest";
import { BEARINGS } from "../../src/catalogue/bearings.ts";
import { row } from "../../src/core/table.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "bearing makers' catalogue pages (metric series in N, R series converted from lbf)",
  from: "seen",
  columns: ["dynamicRating", "staticRating", "cornerRadius"],
  rows: [
    ["6000", 4550, 1960, 0.3],
    ["6001", 5100, 2390, 0.3],
    ["6200", 5100, 2390, 0.6],
    ["6800", 1830, 925, 0.3],
    ["6801", 1920, 1040, 0.3],
    ["6900", 2700, 1270, 0.3],
    ["6901", 2890, 1460, 0.3],
    ["R4", 1481, 618, 0.3],
    ["R6", 3336, 1410, 0.4],
    ["R8", 5120, 2393, 0.4],
  ],
} as const;

agrees(BEARINGS, SEEN);

/** Where catalogues disagree: every pair of C and C0 in N that was met, seen or remembered. */
const DISAGREE: readonly [string, number[], number[]][] = [
  ["608", [3293, 3295, 3450], [1379, 1373, 1370]],
  ["623", [631, 640, 540], [219, 230, 180]],
  ["624", [1301, 936], [488, 290]],
  ["625", [1729, 1140], [675, 380]],
  ["634", [1340, 1730], [523, 670]],
  ["696", [1340, 1730], [523, 670]],
  ["6003", [6800, 6000], [3350, 3250]],
  ["6004", [9400, 9950], [5050, 5000]],
  ["6201", [6100, 6800, 7280], [2750, 3050, 3100]],
  ["6202", [7750, 7650], [3600, 3750]],
  ["6203", [9600, 9550], [4600, 4800]],
  ["6902", [3650, 4350], [2000, 2260]],
];

describe("ratings on which catalogues disagree (the lower of each is used)", () => {
  it.each(DISAGREE)("%s", (key, dynamic, still) => {
    const { values, differs } = row(BEARINGS, key);
    expect(values.dynamicRating).toBe(Math.min(...dynamic));
    expect(values.staticRating).toBe(Math.min(...still));
    const lower = differs?.filter(({ settled }) => settled === "lower") ?? [];
    const recorded = lower.flatMap(({ others }) => others);
    expect([...dynamic, ...still].filter((one) => !recorded.includes(one)).sort()).toEqual(
      [values.dynamicRating, values.staticRating].sort(),
    );
  });
});

describe("inch bearings (ABMA 12, R series, a maker's catalogue page: seen)", () => {
  it.each([
    ["R4", 1 / 4, 5 / 8, 0.196, 333, 139],
    ["R6", 3 / 8, 7 / 8, 9 / 32, 750, 317],
    ["R8", 1 / 2, 9 / 8, 5 / 16, 1151, 538],
  ])("%s is %d x %d x %d in", (key, bore, outside, width, dynamic, still) => {
    const { values } = row(BEARINGS, key);
    expect(values.bore).toBeCloseTo(bore * 25.4, 2);
    expect(values.outside).toBeCloseTo(outside * 25.4, 2);
    expect(Math.abs(values.width - width * 25.4)).toBeLessThan(0.002);
    expect(Math.abs(values.dynamicRating - dynamic * 4.44822)).toBeLessThan(1);
    expect(Math.abs(values.staticRating - still * 4.44822)).toBeLessThan(1);
  });
});

/** Lands that stood in or are remembered from a maker's catalogue. From memory. */
const LANDS = {
  source: "bearing makers' catalogues, lands of the rings",
  from: "memory",
  columns: ["innerLand", "outerLand"],
  rows: [
    ["608", 12.1, 19.2],
    ["6000", 14.8, 22.6],
    ["6001", 17, 24.8],
    ["6002", 20.5, 28.2],
    ["6003", 23, 31.4],
    ["6004", 27.2, 37.2],
    ["6005", 32, 42.2],
    ["6200", 17, 24.8],
    ["6201", 18.5, 27.4],
    ["6202", 21.7, 30.4],
    ["6203", 24.5, 35],
  ],
} as const;

agrees(BEARINGS, LANDS);
