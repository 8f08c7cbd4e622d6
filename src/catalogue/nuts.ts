import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A hexagon nut, style 1. */
export type Nut = {
  readonly acrossFlats: number;
  readonly height: number;
};

function nut(key: string, acrossFlats: number, height: number, note?: string): Row<Nut> {
  const values = { acrossFlats, height };
  return noted({ key, values, source: "iso-4032", standing: "standard", from: "seen" }, note);
}

export const NUTS: Table<Nut> = {
  name: "nuts",
  item: "nut",
  title: "Hexagon nuts",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    height: { symbol: "m", unit: "mm", meaning: "height, largest" },
  },
  rows: [
    nut("M2.5", 5, 2),
    nut("M3", 5.5, 2.4),
    nut("M4", 7, 3.2),
    nut("M5", 8, 4.7, "a DIN 934 nut is 4.0 high; ISO is used, which both fit"),
    nut("M6", 10, 5.2, "a DIN 934 nut is 5.0 high; ISO is used, which both fit"),
    nut("M8", 13, 6.8, "a DIN 934 nut is 6.5 high; ISO is used, which both fit"),
    nut("M10", 16, 8.4, "a DIN 934 nut is 8.0 high and 17 across flats; ISO is used, measure"),
    nut("M12", 18, 10.8, "a DIN 934 nut is 10.0 high and 19 across flats; ISO is used, measure"),
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
