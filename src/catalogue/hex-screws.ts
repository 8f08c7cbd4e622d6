import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A hexagon head screw. */
export type HexScrew = {
  readonly acrossFlats: number;
  readonly headHeight: number;
  readonly acrossCorners: number;
  readonly bearingFace: number;
};

type Numbers = [number, number, number, number];

function hexScrew(key: string, numbers: Numbers, from: "seen" | "memory", differs?: Disagreement[]): Row<HexScrew> {
  const [acrossFlats, headHeight, acrossCorners, bearingFace] = numbers;
  const values = { acrossFlats, headHeight, acrossCorners, bearingFace };
  const row: Row<HexScrew> = { key, values, source: "iso-4017", standing: "standard", from };
  return differs === undefined ? row : { ...row, differs };
}

const din = (acrossFlats: number, acrossCorners: number) =>
  differing<HexScrew>("standard", "DIN 933", { acrossFlats: [acrossFlats], acrossCorners: [acrossCorners] });

export const HEX_SCREWS: Table<HexScrew> = {
  name: "hex-screws",
  item: "hexagon screw",
  title: "Hexagon head screws, threaded to the head",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height, nominal" },
    acrossCorners: { symbol: "e", unit: "mm", meaning: "width across corners, smallest" },
    bearingFace: { symbol: "dw", unit: "mm", meaning: "diameter of the face under the head, smallest" },
  },
  rows: [
    hexScrew("M2", [4, 1.4, 4.32, 3.07], "memory"),
    hexScrew("M2.5", [5, 1.7, 5.45, 4.07], "memory"),
    hexScrew("M3", [5.5, 2, 6.01, 4.57], "seen"),
    hexScrew("M4", [7, 2.8, 7.66, 5.88], "seen"),
    hexScrew("M5", [8, 3.5, 8.79, 6.88], "seen"),
    hexScrew("M6", [10, 4, 11.05, 8.88], "seen"),
    hexScrew("M8", [13, 5.3, 14.38, 11.63], "seen"),
    hexScrew("M10", [16, 6.4, 17.77, 14.63], "memory", din(17, 18.9)),
    hexScrew("M12", [18, 7.5, 20.03, 16.63], "memory", din(19, 21.1)),
  ],
  sketch: `
             +-----+  ---
             |     |------------------+   s: across the flats
         e   |     |  dw ////////////|
             |     |------------------+
             +-----+  ---
             |< k >|
`,
};
