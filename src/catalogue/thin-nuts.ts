import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A thin hexagon nut. */
export type ThinNut = {
  readonly acrossFlats: number;
  readonly height: number;
  readonly acrossCorners: number;
};

type Numbers = [number, number, number];

function thinNut(key: string, numbers: Numbers, differs?: Disagreement[]): Row<ThinNut> {
  const [acrossFlats, height, acrossCorners] = numbers;
  const values = { acrossFlats, height, acrossCorners };
  const row: Row<ThinNut> = { key, values, source: "iso-4035", standing: "standard", from: "seen" };
  return differs === undefined ? row : { ...row, differs };
}

export const THIN_NUTS: Table<ThinNut> = {
  name: "thin-nuts",
  item: "thin nut",
  title: "Thin hexagon nuts",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    height: { symbol: "m", unit: "mm", meaning: "height, largest" },
    acrossCorners: { symbol: "e", unit: "mm", meaning: "width across corners, smallest" },
  },
  rows: [
    thinNut("M2", [4, 1.2, 4.32], differing<ThinNut>("standard", "a misprint in one table", { acrossCorners: [5.32] })),
    thinNut("M2.5", [5, 1.6, 5.45]),
    thinNut("M3", [5.5, 1.8, 6.01]),
    thinNut("M4", [7, 2.2, 7.66]),
    thinNut("M5", [8, 2.7, 8.79]),
    thinNut("M6", [10, 3.2, 11.05]),
    thinNut("M8", [13, 4, 14.38]),
    thinNut("M10", [16, 5, 17.77]),
    thinNut("M12", [18, 6, 20.03]),
  ],
  sketch: `
          ______      ---      +--+
         /  __  \\              |  |
        /  /  \\  \\     s       |  |
        \\  \\__/  /             |  |    e: over the corners
         \\______/     ---      +--+
                               |m |
`,
};
