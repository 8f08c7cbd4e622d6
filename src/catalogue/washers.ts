import type { Row, Table } from "../core/table.ts";

/** A plain washer or any flat ring: the hole, the outside, the thickness. */
export type Washer = {
  readonly hole: number;
  readonly outside: number;
  readonly thickness: number;
};

export const WASHER_FIELDS: Table<Washer>["fields"] = {
  hole: { symbol: "d1", unit: "mm", meaning: "hole" },
  outside: { symbol: "d2", unit: "mm", meaning: "outside diameter" },
  thickness: { symbol: "h", unit: "mm", meaning: "thickness, nominal" },
};

export const WASHER_SKETCH = `
          .-----------.           +--+  ---
         /   .-----.   \\          |  |
        |   /       \\   |         +--+
        |  |<- d1 -->|  |         |  |   d2
        |   \\       /   |         +--+
         \\   '-----'   /          |  |
          '-----------'           +--+  ---
                                  |h |
`;

function washer(
  key: string,
  hole: number,
  outside: number,
  thickness: number,
  from: "seen" | "memory" = "seen",
): Row<Washer> {
  return { key, values: { hole, outside, thickness }, source: "iso-7089", standing: "standard", from };
}

export const WASHERS: Table<Washer> = {
  name: "washers",
  item: "washer",
  title: "Plain washers, normal series",
  fields: WASHER_FIELDS,
  rows: [
    washer("M2", 2.2, 5, 0.3, "memory"),
    washer("M2.5", 2.7, 6, 0.5, "memory"),
    washer("M3", 3.2, 7, 0.5),
    washer("M4", 4.3, 9, 0.8),
    washer("M5", 5.3, 10, 1),
    washer("M6", 6.4, 12, 1.6),
    washer("M8", 8.4, 16, 1.6),
    washer("M10", 10.5, 20, 2),
    washer("M12", 13, 24, 2.5),
  ],
  sketch: WASHER_SKETCH,
};
