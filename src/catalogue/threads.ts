import type { Row, Table } from "../core/table.ts";

/** A coarse metric thread and the holes that go with it. */
export type Thread = {
  readonly diameter: number;
  readonly pitch: number;
  readonly minorDiameter: number;
  readonly fineHole: number;
  readonly mediumHole: number;
  readonly coarseHole: number;
  readonly tapDrill: number;
  readonly setScrewKey: number;
};

type Numbers = [number, number, number, number, number, number, number, number];

const PLACES = "clearance holes ISO 273:1979; tap drill ISO 2306; key of the set screw ISO 4026";

function thread(key: string, numbers: Numbers, from: "seen" | "memory" = "seen", more?: string): Row<Thread> {
  const [diameter, pitch, minorDiameter, fineHole, mediumHole, coarseHole, tapDrill, setScrewKey] = numbers;
  const values = { diameter, pitch, minorDiameter, fineHole, mediumHole, coarseHole, tapDrill, setScrewKey };
  const note = more === undefined ? PLACES : `${PLACES}; ${more}`;
  return { key, values, source: "iso-724", standing: "standard", from, note };
}

export const THREADS: Table<Thread> = {
  name: "threads",
  item: "thread",
  title: "Metric coarse threads and their holes",
  fields: {
    diameter: { symbol: "d", unit: "mm", meaning: "outside diameter" },
    pitch: { symbol: "P", unit: "mm", meaning: "pitch" },
    minorDiameter: { symbol: "d3", unit: "mm", meaning: "root diameter of the bolt" },
    fineHole: { symbol: "d_f", unit: "mm", meaning: "fine clearance hole" },
    mediumHole: { symbol: "d_m", unit: "mm", meaning: "medium clearance hole" },
    coarseHole: { symbol: "d_c", unit: "mm", meaning: "coarse clearance hole" },
    tapDrill: { symbol: "d_t", unit: "mm", meaning: "drill before tapping" },
    setScrewKey: { symbol: "s", unit: "mm", meaning: "hexagon key of a set screw of this thread" },
  },
  rows: [
    thread("M2.5", [2.5, 0.45, 1.948, 2.7, 2.9, 3.1, 2.05, 1.3], "seen", "one table rounds the drill to 2.1"),
    thread("M3", [3, 0.5, 2.387, 3.2, 3.4, 3.6, 2.5, 1.5]),
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the root diameter of M4, not pi
    thread("M4", [4, 0.7, 3.141, 4.3, 4.5, 4.8, 3.3, 2]),
    thread("M5", [5, 0.8, 4.019, 5.3, 5.5, 5.8, 4.2, 2.5]),
    thread("M6", [6, 1, 4.773, 6.4, 6.6, 7, 5, 3]),
    thread("M8", [8, 1.25, 6.466, 8.4, 9, 10, 6.8, 4]),
    thread("M10", [10, 1.5, 8.16, 10.5, 11, 12, 8.5, 5], "memory", "the key is from memory, the rest was seen"),
    thread(
      "M12",
      [12, 1.75, 9.853, 13, 13.5, 14.5, 10.2, 6],
      "memory",
      "the key is from memory, the rest was seen; an older British table has 14 and 15 for medium and coarse",
    ),
  ],
  sketch: `
       |<------ d ------>|           |<- d_f, d_m, d_c ->|
       |  |<-- d3 -->|   |       ####|                   |####
        \\_|__________|__/        ####|   hole the bolt   |####
     P   _|__________|__         ####|   passes through  |####
        / |          |  \\
        \\_|__________|__/            |<- d_t ->|
         _|__________|__         ####|         |####  hole that is tapped
        / |          |  \\        ####|         |####  s: key of a set screw
`,
};
