import type { Row, Table } from "../core/table.ts";

/** A thin hexagon nut. */
export type ThinNut = {
  readonly acrossFlats: number;
  readonly height: number;
};

function thinNut(key: string, acrossFlats: number, height: number): Row<ThinNut> {
  return { key, values: { acrossFlats, height }, source: "iso-4035", standing: "standard", from: "seen" };
}

export const THIN_NUTS: Table<ThinNut> = {
  name: "thin-nuts",
  item: "thin nut",
  title: "Thin hexagon nuts",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    height: { symbol: "m", unit: "mm", meaning: "height, largest" },
  },
  rows: [
    thinNut("M2.5", 5, 1.6),
    thinNut("M3", 5.5, 1.8),
    thinNut("M4", 7, 2.2),
    thinNut("M5", 8, 2.7),
    thinNut("M6", 10, 3.2),
    thinNut("M8", 13, 4),
    thinNut("M10", 16, 5),
    thinNut("M12", 18, 6),
  ],
  sketch: `
          ______      ---      +--+
         /  __  \\              |  |
        /  /  \\  \\     s       |  |
        \\  \\__/  /             |  |
         \\______/     ---      +--+
                               |m |
`,
};
