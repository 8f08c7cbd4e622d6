import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A hexagon nut, style 1. */
export type Nut = {
  readonly acrossFlats: number;
  readonly height: number;
};

function nut(key: string, acrossFlats: number, height: number, differs?: Disagreement[]): Row<Nut> {
  const values = { acrossFlats, height };
  const row: Row<Nut> = { key, values, source: "iso-4032", standing: "standard", from: "seen" };
  return differs === undefined ? row : { ...row, differs };
}

const lower = (height: number) => differing<Nut>("standard", "DIN 934, which is lower", { height: [height] });
const wider = (acrossFlats: number, height: number) =>
  differing<Nut>("standard", "DIN 934, which is lower and wider", { acrossFlats: [acrossFlats], height: [height] });

export const NUTS: Table<Nut> = {
  name: "nuts",
  item: "nut",
  title: "Hexagon nuts",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    height: { symbol: "m", unit: "mm", meaning: "height, largest" },
  },
  rows: [
    nut("M2", 4, 1.6),
    nut("M2.5", 5, 2),
    nut("M3", 5.5, 2.4),
    nut("M4", 7, 3.2),
    nut("M5", 8, 4.7, lower(4)),
    nut("M6", 10, 5.2, lower(5)),
    nut("M8", 13, 6.8, lower(6.5)),
    nut("M10", 16, 8.4, wider(17, 8)),
    nut("M12", 18, 10.8, wider(19, 10)),
  ],
  sketch: `
          ______      ---      +----+
         /  __  \\              |    |
        /  /  \\  \\     s       |    |
        \\  \\__/  /             |    |
         \\______/     ---      +----+
                               |<m >|
`,
};
