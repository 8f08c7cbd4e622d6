import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A coarse metric thread and the holes that go with it. */
export type Thread = {
  readonly diameter: number;
  readonly pitch: number;
  readonly pitchDiameter: number;
  readonly minorDiameter: number;
  readonly nutMinor: number;
  readonly nutMinorLargest: number;
  readonly stressArea: number;
  readonly fineHole: number;
  readonly mediumHole: number;
  readonly coarseHole: number;
  readonly tapDrill: number;
  readonly setScrewKey: number;
};

/** Outside, pitch, d2, d3, D1, largest D1 of class 6H, stress area. */
type Profile = [number, number, number, number, number, number, number];
/** Clearance holes fine, medium, coarse, drill, key of the set screw. */
type Holes = [number, number, number, number, number];

const REMEMBERED = "the largest D1 is from memory, by the tolerance 6H of ISO 965-1";

function thread(key: string, profile: Profile, holes: Holes, note = REMEMBERED, differs?: Disagreement[]): Row<Thread> {
  const [diameter, pitch, pitchDiameter, minorDiameter, nutMinor, nutMinorLargest, stressArea] = profile;
  const [fineHole, mediumHole, coarseHole, tapDrill, setScrewKey] = holes;
  const own = { diameter, pitch, pitchDiameter, minorDiameter, nutMinor, nutMinorLargest, stressArea };
  const values = { ...own, fineHole, mediumHole, coarseHole, tapDrill, setScrewKey };
  const row: Row<Thread> = { key, values, source: "iso-724", standing: "standard", from: "memory", note };
  return differs === undefined ? row : { ...row, differs };
}

const NO_KEY = "no set screw of this thread is made";

export const THREADS: Table<Thread> = {
  name: "threads",
  item: "thread",
  title: "Metric coarse threads and their holes",
  fields: {
    diameter: { symbol: "d", unit: "mm", meaning: "outside diameter" },
    pitch: { symbol: "P", unit: "mm", meaning: "pitch", source: "iso-261" },
    pitchDiameter: { symbol: "d2", unit: "mm", meaning: "pitch diameter" },
    minorDiameter: { symbol: "d3", unit: "mm", meaning: "root diameter of the bolt" },
    nutMinor: { symbol: "D1", unit: "mm", meaning: "inside diameter of the nut, smallest" },
    nutMinorLargest: {
      symbol: "D1_6H",
      unit: "mm",
      meaning: "inside diameter of the nut, largest",
      source: "iso-965-1",
    },
    stressArea: { symbol: "A_s", unit: "mm2", meaning: "stress area of the bolt", source: "iso-898-1" },
    fineHole: { symbol: "d_f", unit: "mm", meaning: "fine clearance hole", source: "iso-273" },
    mediumHole: { symbol: "d_m", unit: "mm", meaning: "medium clearance hole", source: "iso-273" },
    coarseHole: { symbol: "d_c", unit: "mm", meaning: "coarse clearance hole", source: "iso-273" },
    tapDrill: { symbol: "d_t", unit: "mm", meaning: "drill before tapping", source: "iso-2306" },
    setScrewKey: {
      symbol: "s",
      unit: "mm",
      meaning: "hexagon key of a set screw of this thread; 0 when none is made",
      source: "iso-4026",
    },
  },
  rows: [
    thread("M2", [2, 0.4, 1.74, 1.509, 1.567, 1.679, 2.07], [2.2, 2.4, 2.6, 1.6, 0.9]),
    thread(
      "M2.5",
      [2.5, 0.45, 2.208, 1.948, 2.013, 2.138, 3.39],
      [2.7, 2.9, 3.1, 2.05, 1.3],
      undefined,
      differing<Thread>("standard", "a table that rounds", { tapDrill: [2.1] }),
    ),
    thread("M3", [3, 0.5, 2.675, 2.387, 2.459, 2.599, 5.03], [3.2, 3.4, 3.6, 2.5, 1.5]),
    thread("M3.5", [3.5, 0.6, 3.11, 2.764, 2.85, 3.01, 6.78], [3.7, 3.9, 4.2, 2.9, 0], `${REMEMBERED}; ${NO_KEY}`),
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the root diameter of M4, not pi
    thread("M4", [4, 0.7, 3.545, 3.141, 3.242, 3.422, 8.78], [4.3, 4.5, 4.8, 3.3, 2]),
    thread("M5", [5, 0.8, 4.48, 4.019, 4.134, 4.334, 14.2], [5.3, 5.5, 5.8, 4.2, 2.5]),
    thread("M6", [6, 1, 5.35, 4.773, 4.917, 5.153, 20.1], [6.4, 6.6, 7, 5, 3]),
    thread(
      "M7",
      [7, 1, 6.35, 5.773, 5.917, 6.153, 28.9],
      [7.4, 7.6, 8, 6, 0],
      `${REMEMBERED}; so is the drill; ${NO_KEY}`,
    ),
    thread("M8", [8, 1.25, 7.188, 6.466, 6.647, 6.912, 36.6], [8.4, 9, 10, 6.8, 4]),
    thread("M10", [10, 1.5, 9.026, 8.16, 8.376, 8.676, 58], [10.5, 11, 12, 8.5, 5], "the key is from memory"),
    thread(
      "M12",
      [12, 1.75, 10.863, 9.853, 10.106, 10.441, 84.3],
      [13, 13.5, 14.5, 10.2, 6],
      "the key is from memory",
      differing<Thread>("standard", "an older British table", { mediumHole: [14], coarseHole: [15] }),
    ),
    thread(
      "M14",
      [14, 2, 12.701, 11.546, 11.835, 12.21, 115],
      [15, 15.5, 16.5, 12, 0],
      `${REMEMBERED}; so are holes and drill; ${NO_KEY}`,
    ),
    thread(
      "M16",
      [16, 2, 14.701, 13.546, 13.835, 14.21, 157],
      [17, 17.5, 18.5, 14, 8],
      `${REMEMBERED}; so are holes, drill and key`,
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
       d2: halfway up the flanks     D1, D1_6H: hole of the finished nut
       A_s: area that carries a pull, of the mean of d2 and d3
`,
};
