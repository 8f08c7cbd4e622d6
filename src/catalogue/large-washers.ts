import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";
import { WASHER_FIELDS, WASHER_SKETCH, type Washer } from "./washers.ts";

function large(key: string, sizes: [number, number, number], from: "seen" | "memory", note?: string): Row<Washer> {
  const [hole, outside, thickness] = sizes;
  const values = { hole, outside, thickness };
  return noted({ key, values, source: "iso-7093-1", standing: "standard", from }, note);
}

export const LARGE_WASHERS: Table<Washer> = {
  name: "large-washers",
  item: "large washer",
  title: "Plain washers, large series",
  fields: WASHER_FIELDS,
  rows: [
    large("M3", [3.2, 9, 0.8], "seen"),
    large("M4", [4.3, 12, 1], "seen"),
    {
      key: "M5",
      values: { hole: 5.3, outside: 15, thickness: 1.2 },
      source: "din-9021",
      standing: "standard",
      from: "memory",
      differs: differing<Washer>("usual", "ISO 7093-1; the thicker form is usually sold", { thickness: [1] }),
    },
    large("M6", [6.4, 18, 1.6], "memory"),
    large("M8", [8.4, 24, 2], "memory"),
    large("M10", [10.5, 30, 2.5], "seen"),
    large("M12", [13, 37, 3], "memory"),
  ],
  sketch: WASHER_SKETCH,
};
