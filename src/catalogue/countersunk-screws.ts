import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A countersunk screw with a hexagon socket, head angle 90 deg. */
export type CountersunkScrew = {
  readonly headDiameter: number;
  readonly headLeast: number;
  readonly headHeight: number;
  readonly key: number;
  readonly socketDepth: number;
};

/** Head to the sharp corner, real head at least, head height, key, socket depth. */
type Numbers = [number, number, number, number, number];
/** What older tables of the standard have for the least head, then the least head, head and height of DIN 7991. */
type Older = [number, number, number, number];

function countersunk(thread: string, numbers: Numbers, [older, dinLeast, dinHead, dinHeight]: Older) {
  const [headDiameter, headLeast, headHeight, key, socketDepth] = numbers;
  const row: Row<CountersunkScrew> = {
    key: thread,
    values: { headDiameter, headLeast, headHeight, key, socketDepth },
    source: "iso-10642",
    standing: "standard",
    from: "memory",
    note: "dk_min and t are from memory, the rest was seen; cut the countersink to dk, so that the head always goes in",
    differs: [
      ...differing<CountersunkScrew>("lower", "older tables, then DIN 7991", { headLeast: [older, dinLeast] }),
      ...differing<CountersunkScrew>("standard", "DIN 7991, to its rounded edge", {
        headDiameter: [dinHead],
        headHeight: [dinHeight],
      }),
    ],
  };
  return row;
}

export const COUNTERSUNK_SCREWS: Table<CountersunkScrew> = {
  name: "countersunk-screws",
  item: "countersunk screw",
  title: "Countersunk screws, 90 deg, hexagon socket",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, to the sharp corner" },
    headLeast: { symbol: "dk_min", unit: "mm", meaning: "diameter of a real head, smallest" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height, to the sharp corner" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
    socketDepth: { symbol: "t", unit: "mm", meaning: "depth of the socket, smallest" },
  },
  rows: [
    countersunk("M3", [6.72, 5.54, 1.86, 2, 1.1], [5.82, 5.7, 6, 1.7]),
    countersunk("M4", [8.96, 7.53, 2.48, 2.5, 1.5], [7.78, 7.64, 8, 2.3]),
    countersunk("M5", [11.2, 9.43, 3.1, 3, 1.9], [9.78, 9.64, 10, 2.8]),
    countersunk("M6", [13.44, 11.34, 3.72, 4, 2.2], [11.73, 11.57, 12, 3.3]),
    countersunk("M8", [17.92, 15.24, 4.96, 5, 3], [15.73, 15.57, 16, 4.4]),
    countersunk("M10", [22.4, 19.22, 6.2, 6, 3.6], [19.67, 19.48, 20, 5.5]),
    countersunk("M12", [26.88, 23.12, 7.44, 8, 4.3], [23.67, 23.48, 24, 6.5]),
  ],
  sketch: `
        ---  |\\
             | \\____________________
        dk   s  | |//////////////////|   length counts from the head's face
             | /~~~~~~~~~~~~~~~~~~~~     dk_min: a real head, edge rounded
        ---  |/
             |t |
             |<k >|
`,
};
