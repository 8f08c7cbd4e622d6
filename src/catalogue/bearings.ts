import type { Row, Table } from "../core/table.ts";

/** A deep-groove ball bearing, shielded, as the plastic round it meets it. */
export type Bearing = {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  readonly innerLand: number;
  readonly outerLand: number;
  readonly cornerRadius: number;
  readonly dynamicRating: number;
  readonly staticRating: number;
};

function bearing(key: string, values: Bearing, note?: string): Row<Bearing> {
  const row = { key, values, source: "bearing-makers", standing: "published", from: "memory" } as const;
  return note === undefined ? row : { ...row, note };
}

export const BEARINGS: Table<Bearing> = {
  name: "bearings",
  item: "bearing",
  title: "Deep-groove ball bearings",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore" },
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter" },
    width: { symbol: "B", unit: "mm", meaning: "width, shields included" },
    innerLand: { symbol: "d1", unit: "mm", meaning: "outside diameter of the inner ring's face" },
    outerLand: { symbol: "D2", unit: "mm", meaning: "inside diameter of the outer ring's face" },
    cornerRadius: { symbol: "r_s", unit: "mm", meaning: "corner radius of the rings" },
    dynamicRating: { symbol: "C", unit: "N", meaning: "dynamic load rating" },
    staticRating: { symbol: "C0", unit: "N", meaning: "static load rating" },
  },
  rows: [
    bearing(
      "608",
      {
        bore: 8,
        outside: 22,
        width: 7,
        innerLand: 12.1,
        outerLand: 19.2,
        cornerRadius: 0.3,
        dynamicRating: 3293,
        staticRating: 1370,
      },
      "catalogues give 3293 to 3450 N and 1370 to 1379 N; the lower of each is used",
    ),
  ],
  sketch: `
        |<------------- D ------------->|
        |      |<------ D2 ------>|     |
        |      |    |<- d1 ->|    |     |
        +------+----+--+  +--+----+-----+  ---
        |outer |    |  |  |  |    |outer|   B
        +------+----+--+  +--+----+-----+  ---
                       |d |
`,
};
