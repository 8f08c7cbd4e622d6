import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** The limits of one tolerance class over one range of sizes, in mm from the nominal. */
export type Limits = {
  readonly over: number;
  readonly upTo: number;
  readonly lower: number;
  readonly upper: number;
};

/** Lower and upper deviation in micrometres: H7, g6, h6, p6. */
type Deviations = readonly [[number, number], [number, number], [number, number], [number, number]];

const CLASSES = ["H7", "g6", "h6", "p6"] as const;

function limits(over: number, upTo: number, deviations: Deviations, h6?: Disagreement[]): Row<Limits>[] {
  return CLASSES.map((tolerance, index) => {
    const [lower, upper] = deviations[index] as [number, number];
    const values = { over, upTo, lower: lower / 1000, upper: upper / 1000 };
    const facts = { source: "iso-286", standing: "standard", from: "seen" } as const;
    const row: Row<Limits> = { key: `${tolerance} ${over} to ${upTo}`, values, ...facts };
    return tolerance === "h6" && h6 !== undefined ? { ...row, differs: h6 } : row;
  });
}

const seller = (lower: number) =>
  differing<Limits>("standard", "a steel seller; three tables have the value used", { lower: [lower] });

export const FITS: Table<Limits> = {
  name: "fits",
  item: "fit",
  title: "Limits of holes (H7) and shafts (g6, h6, p6)",
  fields: {
    over: { symbol: "N_1", unit: "mm", meaning: "sizes over this" },
    upTo: { symbol: "N_2", unit: "mm", meaning: "up to and with this" },
    lower: { symbol: "ei", unit: "mm", meaning: "lower deviation, hole and shaft" },
    upper: { symbol: "es", unit: "mm", meaning: "upper deviation, hole and shaft" },
  },
  rows: [
    ...limits(3, 6, [
      [0, 12],
      [-12, -4],
      [-8, 0],
      [12, 20],
    ]),
    ...limits(
      6,
      10,
      [
        [0, 15],
        [-14, -5],
        [-9, 0],
        [15, 24],
      ],
      seller(-0.01),
    ),
    ...limits(10, 18, [
      [0, 18],
      [-17, -6],
      [-11, 0],
      [18, 29],
    ]),
    ...limits(
      18,
      30,
      [
        [0, 21],
        [-20, -7],
        [-13, 0],
        [22, 35],
      ],
      seller(-0.03),
    ),
  ],
  sketch: `
        es  ......+-----+
                  | H7  |                    +-----+ .... es
        ei  ......+-----+...........+-----+  | p6  |
         nominal size, over N_1     | h6  |  +-----+ .... ei
         and up to N_2    +-----+   +-----+
                          | g6  |            holes: EI and ES on drawings
                          +-----+
`,
};
