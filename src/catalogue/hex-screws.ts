import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A hexagon head screw. */
export type HexScrew = {
  readonly acrossFlats: number;
  readonly headHeight: number;
};

function hexScrew(key: string, acrossFlats: number, headHeight: number, from: "seen" | "memory", note?: string) {
  const values = { acrossFlats, headHeight };
  return noted<HexScrew>({ key, values, source: "iso-4017", standing: "standard", from }, note);
}

const ROWS: readonly Row<HexScrew>[] = [
  hexScrew("M2.5", 5, 1.7, "memory"),
  hexScrew("M3", 5.5, 2, "seen"),
  hexScrew("M4", 7, 2.8, "seen"),
  hexScrew("M5", 8, 3.5, "seen"),
  hexScrew("M6", 10, 4, "seen"),
  hexScrew("M8", 13, 5.3, "seen"),
  hexScrew("M10", 16, 6.4, "memory", "DIN 933 has 17 across flats; ISO is used"),
  hexScrew("M12", 18, 7.5, "memory", "DIN 933 has 19 across flats; ISO is used"),
];

export const HEX_SCREWS: Table<HexScrew> = {
  name: "hex-screws",
  item: "hexagon screw",
  title: "Hexagon head screws, threaded to the head",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height, nominal" },
  },
  rows: ROWS,
  sketch: `
        ---  +-----+
             |     |------------------+
         s   |     |//////////////////|
             |     |------------------+
        ---  +-----+
             |< k >|
`,
};
