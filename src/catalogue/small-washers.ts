import type { Row, Table } from "../core/table.ts";
import { WASHER_FIELDS, WASHER_SKETCH, type Washer } from "./washers.ts";

function small(key: string, sizes: [number, number, number], from: "seen" | "memory" = "memory"): Row<Washer> {
  const [hole, outside, thickness] = sizes;
  return { key, values: { hole, outside, thickness }, source: "iso-7092", standing: "standard", from };
}

export const SMALL_WASHERS: Table<Washer> = {
  name: "small-washers",
  item: "small washer",
  title: "Plain washers, small series, for counterbores",
  fields: WASHER_FIELDS,
  rows: [
    small("M2", [2.2, 4.5, 0.3]),
    small("M2.5", [2.7, 5, 0.5]),
    small("M3", [3.2, 6, 0.5]),
    small("M4", [4.3, 8, 0.5], "seen"),
    small("M5", [5.3, 9, 1]),
    small("M6", [6.4, 11, 1.6]),
    small("M8", [8.4, 15, 1.6]),
    small("M10", [10.5, 18, 1.6], "seen"),
    small("M12", [13, 20, 2]),
  ],
  sketch: WASHER_SKETCH,
};
