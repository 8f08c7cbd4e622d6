import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A lock nut with a plastic ring. The common one is low (DIN 985); ISO 7040 is taller and fits every pocket. */
export type LockNut = {
  readonly acrossFlats: number;
  readonly acrossCorners: number;
  readonly height: number;
  readonly hexagonHeight: number;
  readonly tallHeight: number;
  readonly thinHeight: number;
};

/** Across flats and corners, height and least hexagon height of DIN 985, heights of ISO 7040 and ISO 10511. */
type Numbers = [number, number, number, number, number, number];

function valuesOf([acrossFlats, acrossCorners, height, hexagonHeight, tallHeight, thinHeight]: Numbers): LockNut {
  return { acrossFlats, acrossCorners, height, hexagonHeight, tallHeight, thinHeight };
}

function lockNut(key: string, numbers: Numbers, differs: Disagreement[] = []): Row<LockNut> {
  const facts = { source: "din-985", standing: "standard", from: "memory" } as const;
  const note = "the sizes of DIN 985 were seen; h_t and h_n are from memory";
  const row: Row<LockNut> = { key, values: valuesOf(numbers), ...facts, note };
  return differs.length === 0 ? row : { ...row, differs };
}

/** Other pages count more of the nut as hexagon. */
const metal = (...heights: number[]) => differing<LockNut>("lower", "other pages", { hexagonHeight: heights });
const wider = (acrossFlats: number, acrossCorners: number) =>
  differing<LockNut>("standard", "one page of DIN 985; ISO has the size used", {
    acrossFlats: [acrossFlats],
    acrossCorners: [acrossCorners],
  });

export const LOCK_NUTS: Table<LockNut> = {
  name: "lock-nuts",
  item: "lock nut",
  title: "Lock nuts with a plastic ring",
  fields: {
    acrossFlats: { symbol: "s", unit: "mm", meaning: "width across flats, largest" },
    acrossCorners: { symbol: "e", unit: "mm", meaning: "width across corners, smallest" },
    height: { symbol: "h", unit: "mm", meaning: "height, largest, low form DIN 985" },
    hexagonHeight: { symbol: "m", unit: "mm", meaning: "height of the hexagon, smallest; 0 when not known" },
    tallHeight: { symbol: "h_t", unit: "mm", meaning: "height, largest, tall form ISO 7040", source: "iso-7040" },
    thinHeight: {
      symbol: "h_n",
      unit: "mm",
      meaning: "height, largest, thin form ISO 10511; 0 when not known",
      source: "iso-10511",
    },
  },
  rows: [
    {
      key: "M2.5",
      values: valuesOf([5, 5.45, 3.8, 0, 3.8, 0]),
      source: "common-practice",
      standing: "typical",
      from: "memory",
      note: "outside DIN 985 and ISO 7040; one height is known, so both fields have it",
    },
    lockNut("M3", [5.5, 6.01, 4, 2.4, 4.5, 3.9]),
    lockNut("M4", [7, 7.66, 5, 2.9, 6, 5], metal(3.2)),
    lockNut(
      "M5",
      [8, 8.79, 5, 3.2, 6.8, 5],
      [...metal(3.7), ...differing<LockNut>("standard", "the rule that ISO 7040 follows", { thinHeight: [4.85] })],
    ),
    lockNut("M6", [10, 11.05, 6, 3.4, 8, 6], metal(4, 4.7)),
    lockNut("M8", [13, 14.38, 8, 4.7, 9.5, 6.76]),
    lockNut("M10", [16, 17.77, 10, 6, 11.9, 8.56], wider(17, 18.9)),
    lockNut("M12", [18, 20.03, 12, 7.6, 14.9, 10.23], wider(19, 21.1)),
  ],
  sketch: `
          ______      ---      +-----+
         /  __  \\              |     |\\
        /  /  \\  \\     s       |     | |   plastic ring at this end
        \\  \\__/  /             |     |/    e: over the corners
         \\______/     ---      +-----+
                               |< m >|     flats that a spanner holds
                               |<- h >|    low form; h_t: tall; h_n: thin
`,
};
