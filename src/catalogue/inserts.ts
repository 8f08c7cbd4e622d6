import type { Row, Table } from "../core/table.ts";

/** A brass insert that is melted into the plastic. */
export type Insert = {
  readonly hole: number;
  readonly length: number;
  readonly outside: number;
};

function insert(key: string, hole: number, length: number, outside: number, note: string): Row<Insert> {
  const values = { hole, length, outside };
  return { key, values, source: "fastener-suppliers", standing: "typical", from: "memory", note };
}

const CHART = "hole and outside were seen on a supplier's chart, the length is from memory";

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
    insert("M2.5", 4, 5.7, 4.6, "some are made on the M3 blank, others measure 4.0 and want 3.6"),
    insert("M3", 4, 5.7, 4.4, `${CHART}; sold 3.0 to 5.7 long`),
    insert("M3 short", 4.5, 4, 5, "sources give holes of 4.4 and 4.7 for this wide form; the middle is used"),
    insert("M4", 5.6, 8.1, 6.1, `${CHART}; sold 4.7 to 8.1 long`),
    insert("M5", 6.4, 9.5, 7.1, `${CHART}; sold 5.8 to 9.5 long`),
    insert("M6", 8, 12.7, 8.5, `${CHART}; sold 7.0 to 12.7 long`),
    insert("M8", 9.7, 12.7, 10.1, "sources give holes of 9.6 and 9.7"),
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
