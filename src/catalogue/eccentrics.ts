import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** An eccentric spacer that shifts a wheel when it is turned. */
export type Eccentric = {
  readonly bore: number;
  readonly body: number;
  readonly height: number;
  readonly hexFlats: number;
  readonly offset: number;
  readonly plateHole: number;
};

function eccentric(key: string, body: number, height: number, plateHole: number, note: string): Row<Eccentric> {
  const values = { bore: 5, body, height, hexFlats: 8, offset: 0.79, plateHole };
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

const SMALL =
  "one of bore 3 and round 5 is sold for a plate hole of 5: its height and offset are not published, measure";

export const ECCENTRICS: Table<Eccentric> = {
  name: "eccentrics",
  item: "eccentric",
  title: "Eccentric spacers",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore" },
    body: { symbol: "d_b", unit: "mm", meaning: "diameter of the round that turns in the plate" },
    height: { symbol: "h", unit: "mm", meaning: "height of the spacer beside the plate" },
    hexFlats: { symbol: "s", unit: "mm", meaning: "width across flats of the hexagon" },
    offset: { symbol: "e", unit: "mm", meaning: "bore from the middle of the round; twice that in all" },
    plateHole: { symbol: "d_p", unit: "mm", meaning: "hole in the plate" },
  },
  rows: [
    {
      ...eccentric("6 mm", 7.1, 6, 7.2, `newer ones have a round of 10 instead of the hexagon; ${SMALL}`),
      differs: differing<Eccentric>("usual", "a machine maker's drawing", { plateHole: [7.18] }),
    },
    eccentric(
      "1/4 in",
      7.14,
      6.35,
      7.14,
      "hole and height were seen; ream the hole, a printed 7.14 closes to about 6.9",
    ),
  ],
  sketch: `
        |<------ s ------>|
        +----+   +--------+   ---
        |    | d |        |    h     hexagon beside the plate
        +--+ |   |   +----+   ---
           | |   |   |               d_p: hole of the plate it turns in
           +-+---+---+
           |<- d_b ->|               e: bore from the middle of d_b
`,
};
