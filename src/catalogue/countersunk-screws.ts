import type { Row, Table } from "../core/table.ts";

/** A countersunk screw with a hexagon socket, head angle 90 deg. */
export type CountersunkScrew = {
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly key: number;
};

function countersunk(thread: string, sharp: number, headHeight: number, key: number, seen: string) {
  const note = `${seen}; the sharp diameter is used, so the head always goes in`;
  const values = { headDiameter: sharp, headHeight, key };
  return { key: thread, values, source: "iso-10642", standing: "standard", from: "seen", note } as const;
}

const ROWS: readonly Row<CountersunkScrew>[] = [
  countersunk("M3", 6.72, 1.86, 2, "a real head is 5.54 at least, 5.82 in older tables, 5.70 by DIN 7991"),
  countersunk("M4", 8.96, 2.48, 2.5, "a real head is 7.53 at least, 7.78 in older tables, 7.64 by DIN 7991"),
  countersunk("M5", 11.2, 3.1, 3, "a real head is 9.43 at least, 9.78 in older tables, 9.64 by DIN 7991"),
  countersunk("M6", 13.44, 3.72, 4, "a real head is 11.34 at least, 11.73 in older tables, 11.57 by DIN 7991"),
  countersunk("M8", 17.92, 4.96, 5, "a real head is 15.24 at least, 15.73 in older tables, 15.57 by DIN 7991"),
  countersunk("M10", 22.4, 6.2, 6, "a real head is 19.22 at least, 19.67 in older tables, 19.48 by DIN 7991"),
  countersunk("M12", 26.88, 7.44, 8, "a real head is 23.12 at least, 23.67 in older tables, 23.48 by DIN 7991"),
];

export const COUNTERSUNK_SCREWS: Table<CountersunkScrew> = {
  name: "countersunk-screws",
  item: "countersunk screw",
  title: "Countersunk screws, 90 deg, hexagon socket",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, to the sharp corner" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height, to the sharp corner" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
  },
  rows: ROWS,
  sketch: `
        ---  |\\
             |  \\____________________
        dk   s    |//////////////////|   length counts from the head's face
             |  /~~~~~~~~~~~~~~~~~~~~
        ---  |/
             |<k >|
`,
};
