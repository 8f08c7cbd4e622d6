import type { Citation } from "../core/bibliography.ts";
import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** How short and how long a standard makes one thread with one head. */
export type LengthRange = {
  readonly head: string;
  readonly thread: string;
  readonly shortest: number;
  readonly longest: number;
};

type Range = readonly [thread: string, shortest: number, longest: number];

function ranges(head: string, source: Citation, each: readonly Range[], note?: string): Row<LengthRange>[] {
  return each.map(([thread, shortest, longest]) => {
    const values = { head, thread, shortest, longest };
    return noted({ key: `${head} ${thread}`, values, source, standing: "standard", from: "memory" }, note);
  });
}

export const LENGTH_RANGES: Table<LengthRange> = {
  name: "length-ranges",
  item: "length range",
  title: "Shortest and longest screws of the standards",
  fields: {
    head: { symbol: "head", unit: "", meaning: "form of the head" },
    thread: { symbol: "M", unit: "", meaning: "thread" },
    shortest: { symbol: "L_min", unit: "mm", meaning: "shortest of the standard" },
    longest: { symbol: "L_max", unit: "mm", meaning: "longest of the standard" },
  },
  rows: [
    ...ranges("cap", "iso-4762", [
      ["M2", 3, 20],
      ["M2.5", 4, 25],
      ["M3", 5, 30],
      ["M4", 6, 40],
      ["M5", 8, 50],
      ["M6", 10, 60],
      ["M8", 12, 80],
      ["M10", 16, 100],
      ["M12", 20, 120],
    ]),
    ...ranges(
      "button",
      "iso-7380-1",
      [
        ["M3", 6, 12],
        ["M4", 8, 16],
        ["M5", 10, 30],
        ["M6", 10, 30],
        ["M8", 10, 40],
        ["M10", 16, 40],
        ["M12", 16, 50],
      ],
      "the edition of 2011 and shops have longer ones",
    ),
    ...ranges("countersunk", "iso-10642", [
      ["M3", 8, 30],
      ["M4", 8, 40],
      ["M5", 8, 50],
      ["M6", 8, 60],
      ["M8", 10, 80],
      ["M10", 12, 100],
      ["M12", 20, 100],
    ]),
    ...ranges("hexagon", "iso-4017", [
      ["M3", 6, 30],
      ["M4", 8, 40],
      ["M5", 10, 50],
      ["M6", 12, 60],
      ["M8", 16, 80],
      ["M10", 20, 100],
      ["M12", 25, 120],
    ]),
  ],
  sketch: `
        +----+
        |    |------------------------+
        |head|    ////////////////////|  M     L_min <= L <= L_max
        |    |------------------------+
        +----+
             |<---------- L --------->|     a countersunk head counts in L
`,
};
