import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** The inside of a bar: the slot behind its lips, and the bore in its core. */
export type BarSlot = {
  readonly innerWidth: number;
  readonly coreBore: number;
  readonly flatStart: number;
  readonly reach: number;
  readonly endThread: string;
  readonly nutThreads: string;
};

type Numbers = [number, number, number, number];

function nutSlot(
  key: string,
  numbers: Numbers,
  endThread: string,
  nutThreads: string,
  others: Partial<Record<keyof BarSlot, number[]>> = {},
): Row<BarSlot> {
  const [innerWidth, coreBore, flatStart, reach] = numbers;
  const values = { innerWidth, coreBore, flatStart, reach, endThread, nutThreads };
  const { flatStart: starts, ...widths } = others;
  const by = "other makers";
  const differs = [
    ...differing<BarSlot>("lower", by, widths),
    ...(starts === undefined ? [] : differing<BarSlot>("higher", by, { flatStart: starts })),
  ];
  const row: Row<BarSlot> = { key, values, source: "common-practice", standing: "typical", from: "memory" };
  return differs.length === 0 ? row : { ...row, differs };
}

export const BAR_SLOTS: Table<BarSlot> = {
  name: "bar-slots",
  item: "bar",
  title: "Slots and cores of bars with slots",
  fields: {
    innerWidth: { symbol: "w_i", unit: "mm", meaning: "width of the slot behind its lips" },
    coreBore: { symbol: "d_k", unit: "mm", meaning: "bore in the core, before it is tapped" },
    flatStart: { symbol: "t_f", unit: "mm", meaning: "depth at which the thread of a flat slot nut begins" },
    reach: { symbol: "t_r", unit: "mm", meaning: "deepest a screw may reach below the face" },
    endThread: { symbol: "M_e", unit: "", meaning: "thread the core is tapped with" },
    nutThreads: { symbol: "M_n", unit: "", meaning: "threads of the slot nuts that are sold" },
  },
  rows: [
    nutSlot("20x20 slot 6", [11, 4.2, 2, 5], "M5 or M6", "M3 M4 M5", {
      innerWidth: [12],
      coreBore: [5],
      flatStart: [1.5],
    }),
    nutSlot("20x20 slot 5", [11.5, 4.3, 1.8, 4.8], "M5", "M3 M4 M5"),
    nutSlot("25x25 slot 6", [12, 5, 2.2, 5.5], "M6", "M4 M5", { innerWidth: [13], flatStart: [1.8] }),
    nutSlot("30x30 slot 6", [13, 5, 2.2, 7.5], "M6", "M4 M5 M6", { innerWidth: [16.3], flatStart: [2] }),
    nutSlot("30x30 slot 8", [16, 6.8, 2.2, 8], "M8", "M4 M5 M6", {
      innerWidth: [16.5],
      coreBore: [7.3],
      flatStart: [1.8],
    }),
    nutSlot("40x40 slot 8", [20, 6.8, 4.5, 11], "M8", "M4 M5 M6 M8", { flatStart: [2] }),
    nutSlot("40x40 slot 10", [20, 8.5, 4.5, 11], "M10", "M5 M6 M8", { innerWidth: [20.5], flatStart: [4] }),
    nutSlot("45x45 slot 10", [20, 10, 4.5, 13], "M12", "M5 M6 M8", { innerWidth: [20.5], flatStart: [4] }),
    nutSlot("1 in", [14.8, 5.2, 2.2, 5.2], "1/4-20", "1/4-20 10-32"),
    nutSlot("1.5 in", [20.6, 6.65, 3.3, 8.7], "5/16-18", "5/16-18 1/4-20"),
    nutSlot("V 20x20", [11, 4.2, 1.8, 5], "M5", "M3 M4 M5"),
    nutSlot("V 20x40", [11, 4.2, 1.8, 5], "M5", "M3 M4 M5"),
    nutSlot("V 20x60", [11, 4.2, 1.8, 5], "M5", "M3 M4 M5"),
    nutSlot("V 20x80", [11, 4.2, 1.8, 5], "M5", "M3 M4 M5"),
  ],
  sketch: `
        +------+         +------+  ---
        |      |         |      |   t_f: thread of a flat nut, M_n
        +---+  +--     --+  +---+   t_r: a screw ends above this
            |<---- w_i ---->|
            +------+ +------+
                   |d|              d_k: bore in the core, tapped M_e
`,
};
