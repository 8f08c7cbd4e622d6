import { type Row, row, type Table } from "../core/table.ts";
import { BEARINGS } from "./bearings.ts";
import { noted } from "./noted.ts";
import { WASHER_FIELDS, WASHER_SKETCH, type Washer } from "./washers.ts";

const THICKNESSES = [0.1, 0.15, 0.2, 0.3, 0.5, 1] as const;

/** Bore and outside diameter of the rings of DIN 988, from memory. */
const SIZES = [
  [3, 6],
  [4, 8],
  [5, 10],
  [6, 12],
  [7, 13],
  [8, 14],
  [9, 15],
  [10, 16],
  [11, 17],
  [12, 18],
  [13, 19],
  [14, 20],
  [15, 21],
  [16, 22],
  [17, 24],
  [18, 25],
  [20, 28],
  [22, 30],
  [25, 35],
] as const;

/** Bearings for which a ring as wide as the inner land is listed: of those with the same ring, the usual one. */
const TURNED_FOR = [
  ...["623", "624", "625", "626", "627", "688", "608", "609", "6800", "6900", "6000"],
  ...["6801", "6901", "6001", "6802", "6902", "6002", "6003", "6004", "6005"],
];

function keyOf(hole: number, outside: number, thickness: number): string {
  return `${hole} x ${outside} x ${Number.isInteger(thickness) ? thickness.toFixed(1) : thickness}`;
}

function standardRings([hole, outside]: readonly [number, number]): Row<Washer>[] {
  const facts = { source: "din-988", standing: "standard", from: "memory" } as const;
  const shielded = BEARINGS.rows.filter(({ values }) => values.bore === hole && values.innerLand < outside);
  const names = shielded.map(({ key }) => key).join(", ");
  const note = names === "" ? undefined : `reaches past the inner land, over the shield, of ${names}`;
  return THICKNESSES.map((thickness) => {
    const values = { hole, outside, thickness };
    return noted({ key: keyOf(hole, outside, thickness), values, ...facts }, note);
  });
}

function turnedRing(bearing: string): Row<Washer> {
  const { bore, innerLand } = row(BEARINGS, bearing).values;
  const values = { hole: bore, outside: Math.floor(innerLand), thickness: 1 };
  const note = `metal, turned to the inner land of the ${bearing}, ${innerLand}: it touches the inner ring only`;
  const facts = { source: "common-practice", standing: "typical", from: "memory" } as const;
  return { key: keyOf(values.hole, values.outside, 1), values, ...facts, note };
}

export const SHIM_RINGS: Table<Washer> = {
  name: "shim-rings",
  item: "shim ring",
  title: "Shim rings, and rings turned to a bearing's inner land",
  fields: WASHER_FIELDS,
  rows: [...TURNED_FOR.map(turnedRing), ...SIZES.flatMap(standardRings)],
  sketch: WASHER_SKETCH,
};
