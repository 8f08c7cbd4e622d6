import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A lock nut with a plastic ring. The common one is low (DIN 985); ISO 7040 is taller and fits every pocket. */
export type LockNut = {
  readonly acrossFlats: number;
  readonly height: number;
  readonly tallHeight: number;
};

const TALL = "height was seen; tallHeight, ISO 7040, is from memory";

function lockNut(key: string, acrossFlats: number, height: number, tallHeight: number, more?: string): Row<LockNut> {
  const row = { key, values: { acrossFlats, height, tallHeight } };
  const note = more === undefined ? TALL : `${TALL}; ${more}`;
  return noted({ ...row, source: "din-985", standing: "standard", from: "memory" }, note);
}

export const LOCK_NUTS: Table<LockNut> = {
  name: "lock-nuts",
  item: "lock nut",
  title: "Lock nuts with a plastic ring",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    height: { symbol: "h", unit: "mm", meaning: "height, largest, low form DIN 985" },
    tallHeight: { symbol: "h_t", unit: "mm", meaning: "height, largest, tall form ISO 7040" },
  },
  rows: [
    {
      key: "M2.5",
      values: { acrossFlats: 5, height: 3.8, tallHeight: 3.8 },
      source: "common-practice",
      standing: "typical",
      from: "memory",
      note: "outside DIN 985 and ISO 7040; one height is known, so both fields have it",
    },
    lockNut("M3", 5.5, 4, 4.5),
    lockNut("M4", 7, 5, 6),
    lockNut("M5", 8, 5, 6.8),
    lockNut("M6", 10, 6, 8),
    lockNut("M8", 13, 8, 9.5, "ISO 10511, 6.76, is lower here"),
    lockNut("M10", 16, 10, 11.9, "17 across flats in one source of DIN 985; ISO is used, measure"),
    lockNut("M12", 18, 12, 14.9, "19 across flats in one source of DIN 985; ISO is used, measure"),
  ],
  sketch: `
          ______      ---      +-----+
         /  __  \\              |     |\\
        /  /  \\  \\     s       |     | |   plastic ring at this end
        \\  \\__/  /             |     |/
         \\______/     ---      +-----+
                               |<- h >|    low form; h_t: tall form
`,
};
