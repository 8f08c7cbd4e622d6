import type { Citation } from "../core/bibliography.ts";
import { type Row, row, type Table } from "../core/table.ts";
import { LENGTH_RANGES } from "./length-ranges.ts";

/** The lengths of one thread that shops keep. mm, under the head; countersunk heads count. */
export type StockLengths = {
  readonly lengths: readonly number[];
  readonly source: Citation;
  readonly from: "seen" | "memory";
};

function stocked(...lengths: number[]): StockLengths {
  return { lengths, source: "common-practice", from: "memory" };
}

/** Lengths kept by most shops, by thread; all of them are lengths of ISO 888. A user's own list overrides them. */
export const STOCK_LENGTHS: Readonly<Record<string, StockLengths>> = {
  "M2.5": stocked(6, 8, 10, 12, 16, 20, 25),
  M3: stocked(6, 8, 10, 12, 16, 20, 25, 30),
  M4: stocked(6, 8, 10, 12, 16, 20, 25, 30, 35, 40),
  M5: stocked(8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60),
  M6: stocked(10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 60),
  M8: stocked(12, 16, 20, 25, 30, 35, 40, 45, 50, 60),
};

/** How long the bolts of one thread are made and sold. */
export type BoltLength = {
  readonly stock: string;
  readonly shortest: number;
  readonly longest: number;
};

function boltLength([key, { lengths }]: [string, StockLengths]): Row<BoltLength> {
  const { shortest, longest } = row(LENGTH_RANGES, `cap ${key}`).values;
  const values = { stock: lengths.join(" "), shortest, longest };
  const note = "shops also sell longer ones";
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

export const BOLT_LENGTHS: Table<BoltLength> = {
  name: "bolt-lengths",
  item: "bolt length",
  title: "Lengths of bolts in stock",
  fields: {
    stock: { symbol: "L", unit: "mm", meaning: "lengths kept by most shops" },
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest cap screw of the standard", source: "iso-4762" },
    longest: { symbol: "L_max", unit: "mm", meaning: "longest cap screw of the standard", source: "iso-4762" },
  },
  rows: Object.entries(STOCK_LENGTHS).map(boltLength),
  sketch: `
        +----+
        |    |------------------------+
        |    |    ////////////////////|     L_min <= L <= L_max
        |    |------------------------+
        +----+
             |<---------- L --------->|     a countersunk head counts in L
`,
};
