import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A brass insert that is melted into the plastic. */
export type Insert = {
  readonly hole: number;
  readonly length: number;
  readonly outside: number;
};

function insert(
  key: string,
  hole: number,
  length: number,
  outside: number,
  note: string,
  differs: Disagreement[],
): Row<Insert> {
  const values = { hole, length, outside };
  return { key, values, source: "fastener-suppliers", standing: "typical", from: "memory", note, differs };
}

const CHART = "hole and outside were seen on a supplier's chart, the length is from memory";

/** Sizes that are sold as well. */
const sold = (others: Partial<Record<keyof Insert, number[]>>) =>
  differing<Insert>("usual", "other suppliers and shorter forms", others);

export const INSERTS: Table<Insert> = {
  name: "inserts",
  item: "insert",
  title: "Heat-set inserts",
  fields: {
    hole: { symbol: "d_h", unit: "mm", meaning: "finished hole, +0.1" },
    length: { symbol: "l", unit: "mm", meaning: "length" },
    outside: { symbol: "d_o", unit: "mm", meaning: "outside diameter over the knurl" },
  },
  rows: [
    insert("M2", 3.2, 4, 3.6, "walls of 1.3 at least", sold({ outside: [3.2], length: [3] })),
    insert(
      "M2.5",
      4,
      5.7,
      4.6,
      "made on the M3 blank; walls of 1.5 at least",
      sold({ hole: [3.6], outside: [4], length: [4] }),
    ),
    insert("M3", 4, 5.7, 4.4, `${CHART}; walls of 1.6 at least`, sold({ outside: [4.2, 4.6], length: [3] })),
    insert(
      "M3 short",
      4.5,
      4,
      5,
      "the wide form; walls of 1.6 at least, print a test strip",
      differing<Insert>("middle", "suppliers", { hole: [4.4, 4.7] }),
    ),
    insert("M4", 5.6, 8.1, 6.1, `${CHART}; walls of 2.1 at least`, sold({ length: [4.7] })),
    insert("M5", 6.4, 9.5, 7.1, `${CHART}; walls of 2.6 at least`, sold({ length: [5.8] })),
    insert("M6", 8, 12.7, 8.5, `${CHART}; walls of 3.3 at least`, sold({ length: [7] })),
    insert("M8", 9.7, 12.7, 10.1, "walls of 4.0 at least", sold({ hole: [9.6] })),
  ],
  sketch: `
            |<---- d_o ---->|
            /\\/\\/\\/\\/\\/\\/\\/\\/     ---
        ###|                 |###
        ###|     insert      |###  l
        ###|                 |###
            \\/\\/\\/\\/\\/\\/\\/\\/\\     ---
        ####|<---- d_h ---->|####      the hole before it is melted in
`,
};
