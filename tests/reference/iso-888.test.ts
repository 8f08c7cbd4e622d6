import { expect, it } from "vitest";
import { STOCK_LENGTHS } from "../../src/catalogue/bolt-lengths.ts";
import { LENGTH_RANGES } from "../../src/catalogue/length-ranges.ts";
import { NOMINAL_LENGTHS } from "../../src/catalogue/nominal-lengths.ts";
import { agrees } from "./agrees.ts";

/** ISO 888; up to 80 most of them stood in a length column of another standard (seen), in brackets where avoided. */
const PREFERRED = [2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 120];
const AVOIDED = [14, 18, 22, 28, 55, 65, 75];

it("lists the lengths of ISO 888, and which of them to avoid", () => {
  const of = (use: string) =>
    NOMINAL_LENGTHS.rows.filter(({ values }) => values.use === use).map(({ values }) => values.length);
  expect(of("preferred")).toEqual(PREFERRED);
  expect(of("avoid")).toEqual(AVOIDED);
});

it("stocks only lengths of ISO 888", () => {
  const stocked = Object.values(STOCK_LENGTHS).flatMap(({ lengths }) => lengths);
  expect(stocked.filter((length) => ![...PREFERRED, ...AVOIDED].includes(length))).toEqual([]);
});

const RANGES = {
  source: "ISO 4762, ISO 7380-1, ISO 10642 and ISO 4017, ranges of length",
  from: "memory",
  columns: ["shortest", "longest"],
  rows: [
    ["cap M2", 3, 20],
    ["cap M2.5", 4, 25],
    ["cap M3", 5, 30],
    ["cap M4", 6, 40],
    ["cap M5", 8, 50],
    ["cap M6", 10, 60],
    ["cap M8", 12, 80],
    ["cap M10", 16, 100],
    ["cap M12", 20, 120],
    ["button M3", 6, 12],
    ["button M4", 8, 16],
    ["button M5", 10, 30],
    ["button M6", 10, 30],
    ["button M8", 10, 40],
    ["button M10", 16, 40],
    ["button M12", 16, 50],
    ["countersunk M3", 8, 30],
    ["countersunk M4", 8, 40],
    ["countersunk M5", 8, 50],
    ["countersunk M6", 8, 60],
    ["countersunk M8", 10, 80],
    ["countersunk M10", 12, 100],
    ["countersunk M12", 20, 100],
    ["hexagon M3", 6, 30],
    ["hexagon M4", 8, 40],
    ["hexagon M5", 10, 50],
    ["hexagon M6", 12, 60],
    ["hexagon M8", 16, 80],
    ["hexagon M10", 20, 100],
    ["hexagon M12", 25, 120],
  ],
} as const;

agrees(LENGTH_RANGES, RANGES);
