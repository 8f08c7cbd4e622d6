import type { Row, Table } from "../core/table.ts";

/** One nominal length of the standard. */
export type NominalLength = {
  readonly length: number;
  readonly use: string;
};

const AVOID = "avoid";

function length(nominal: number, from: "seen" | "memory", use = "preferred"): Row<NominalLength> {
  return { key: String(nominal), values: { length: nominal, use }, source: "iso-888", standing: "standard", from };
}

export const NOMINAL_LENGTHS: Table<NominalLength> = {
  name: "nominal-lengths",
  item: "nominal length",
  title: "Nominal lengths of bolts and screws",
  fields: {
    length: { symbol: "L", unit: "mm", meaning: "nominal length" },
    use: { symbol: "use", unit: "", meaning: "preferred, or printed in brackets: avoid" },
  },
  rows: [
    length(2, "seen"),
    length(2.5, "memory"),
    length(3, "seen"),
    length(4, "seen"),
    length(5, "seen"),
    length(6, "seen"),
    length(8, "seen"),
    length(10, "seen"),
    length(12, "seen"),
    length(14, "seen", AVOID),
    length(16, "seen"),
    length(18, "memory", AVOID),
    length(20, "seen"),
    length(22, "memory", AVOID),
    length(25, "seen"),
    length(28, "memory", AVOID),
    length(30, "seen"),
    length(35, "seen"),
    length(40, "seen"),
    length(45, "seen"),
    length(50, "seen"),
    length(55, "seen", AVOID),
    length(60, "seen"),
    length(65, "seen", AVOID),
    length(70, "seen"),
    length(75, "seen", AVOID),
    length(80, "seen"),
    length(90, "memory"),
    length(100, "memory"),
    length(110, "memory"),
    length(120, "memory"),
  ],
  sketch: `
        +----+------------------------+
        |    |    ////////////////////|     use: whether the standard
        +----+------------------------+          prefers it
             |<---------- L --------->|
`,
};
