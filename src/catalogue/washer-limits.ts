import type { Row, Table } from "../core/table.ts";

/** How far washers may be from their nominal sizes. */
export type WasherLimits = {
  readonly holeMost: number;
  readonly outsideLeast: number;
  readonly thicknessMost: number;
  readonly largeThicknessMost: number;
};

type Numbers = [number, number, number, number];

function limits(key: string, numbers: Numbers, from: "seen" | "memory"): Row<WasherLimits> {
  const [holeMost, outsideLeast, thicknessMost, largeThicknessMost] = numbers;
  const values = { holeMost, outsideLeast, thicknessMost, largeThicknessMost };
  const note = "hardness 200 HV goes with bolts up to 8.8, 300 HV with 10.9; older unmarked washers have 140 HV";
  return { key, values, source: "iso-7089", standing: "standard", from, note };
}

export const WASHER_LIMITS: Table<WasherLimits> = {
  name: "washer-limits",
  item: "washer",
  title: "Limits of plain washers, normal and large series",
  fields: {
    holeMost: { symbol: "d1_max", unit: "mm", meaning: "hole, largest" },
    outsideLeast: { symbol: "d2_min", unit: "mm", meaning: "outside diameter, smallest, normal series" },
    thicknessMost: { symbol: "h_max", unit: "mm", meaning: "thickness, largest, normal series" },
    largeThicknessMost: {
      symbol: "h_l",
      unit: "mm",
      meaning: "thickness, largest, large series; 0 when there is none",
      source: "iso-7093-1",
    },
  },
  rows: [
    limits("M2", [2.34, 4.7, 0.35, 0], "memory"),
    limits("M2.5", [2.84, 5.7, 0.55, 0], "memory"),
    limits("M3", [3.38, 6.64, 0.55, 0.9], "memory"),
    limits("M4", [4.48, 8.64, 0.9, 1.1], "seen"),
    limits("M5", [5.48, 9.64, 1.1, 1.1], "memory"),
    limits("M6", [6.62, 11.57, 1.8, 1.8], "memory"),
    limits("M8", [8.62, 15.57, 1.8, 2.2], "memory"),
    limits("M10", [10.77, 19.48, 2.2, 2.7], "seen"),
    limits("M12", [13.27, 23.48, 2.7, 3.3], "memory"),
  ],
  sketch: `
          .-----------.            +--+  ---
         /   .-----.   \\           |  |
        |   /       \\   |          +--+
        |  |<d1_max>|   |          |  |   d2_min
        |   \\       /   |          +--+
         \\   '-----'   /           |  |
          '-----------'            +--+  ---
                                   h_max     h_l: of the large series
`,
};
