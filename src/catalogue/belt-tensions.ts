import type { Row, Table } from "../core/table.ts";

/** What one belt of one width may pull for good, by a table for belts 25.4 wide, scaled to its width. */
export type BeltTension = {
  readonly construction: string;
  readonly rating: number;
  readonly width: number;
  readonly allowable: number;
};

type Kind = [string, string, number];

/** Key, construction, and the force a belt 25.4 wide may carry. */
const KINDS = {
  two: ["2 mm G", "rubber, glass cords", 111],
  three: ["3 mm G", "rubber, glass cords", 507],
  threeH: ["3 mm H", "rubber, glass cords", 285],
  fiveH: ["5 mm H", "rubber, glass cords", 454],
  t25: ["T2.5", "urethane, steel cords", 312],
  t5: ["T5", "urethane, steel cords", 930],
} satisfies Record<string, Kind>;

function tension([name, construction, rating]: Kind, width: number, allowable: number): Row<BeltTension> {
  const values = { construction, rating, width, allowable };
  const note = "scaled by width; narrow belts carry less, because their edge cords are cut";
  return { key: `${name} x ${width}`, values, source: "belt-makers", standing: "published", from: "seen", note };
}

export const BELT_TENSIONS: Table<BeltTension> = {
  name: "belt-tensions",
  item: "belt tension",
  title: "Allowable working tension of belts",
  fields: {
    construction: { symbol: "body", unit: "", meaning: "what the belt is made of" },
    rating: { symbol: "T_in", unit: "N", meaning: "allowable tension of a belt 25.4 wide" },
    width: { symbol: "w_b", unit: "mm", meaning: "width" },
    allowable: { symbol: "T_w", unit: "N", meaning: "allowable tension of this width" },
  },
  rows: [
    tension(KINDS.two, 6, 26.2),
    tension(KINDS.two, 9, 39.3),
    tension(KINDS.two, 10, 43.7),
    tension(KINDS.three, 6, 119.8),
    tension(KINDS.three, 9, 179.6),
    tension(KINDS.three, 15, 299.4),
    tension(KINDS.threeH, 9, 101.0),
    tension(KINDS.threeH, 15, 168.3),
    tension(KINDS.fiveH, 9, 160.9),
    tension(KINDS.fiveH, 15, 268.1),
    tension(KINDS.t25, 6, 73.7),
    tension(KINDS.t25, 10, 122.8),
    tension(KINDS.t5, 6, 219.7),
    tension(KINDS.t5, 10, 366.1),
    tension(KINDS.t5, 16, 585.8),
  ],
  sketch: `
               |<- w_b ->|
               +---------+
        T_w <--| : : : : |--> T_w     T_in: the same for 25.4 wide
               +---------+
                 body and its cords
`,
};
