import type { Row, Table } from "../core/table.ts";

/** An axial ball bearing. A value of 0 means not known. */
export type ThrustBearing = {
  readonly bore: number;
  readonly outside: number;
  readonly height: number;
  readonly housingBore: number;
  readonly cornerRadius: number;
  readonly shaftShoulder: number;
  readonly housingShoulder: number;
  readonly dynamicRating: number;
  readonly staticRating: number;
};

/** Bore, outside, height, housing washer bore, corner radius, shoulders of shaft and housing, ratings Ca and C0a. */
type Numbers = [number, number, number, number, number, number, number, number, number];

function valuesOf([bore, outside, height, housingBore, cornerRadius, shaft, housing, dynamic, still]: Numbers) {
  const sizes = { bore, outside, height, housingBore, cornerRadius };
  return { ...sizes, shaftShoulder: shaft, housingShoulder: housing, dynamicRating: dynamic, staticRating: still };
}

function standard(key: string, numbers: Numbers, others: string): Row<ThrustBearing> {
  const note = `ratings also given as ${others}, the lower of each is used; the shoulders hold for two makers`;
  return { key, values: valuesOf(numbers), source: "iso-104", standing: "published", from: "memory", note };
}

function miniature(key: string, bore: number, outside: number, height: number): Row<ThrustBearing> {
  const values = valuesOf([bore, outside, height, 0, 0, 0, 0, 0, 0]);
  const note =
    "outside ISO 104; ratings, radius and shoulders are not known; its thin washers want metal under all of them";
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

export const THRUST_BEARINGS: Table<ThrustBearing> = {
  name: "thrust-bearings",
  item: "thrust bearing",
  title: "Axial ball bearings",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore of the shaft washer" },
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter" },
    height: { symbol: "H", unit: "mm", meaning: "height" },
    housingBore: { symbol: "D1", unit: "mm", meaning: "bore of the housing washer; 0 when not known" },
    cornerRadius: { symbol: "r_s", unit: "mm", meaning: "corner radius of the washers; 0 when not known" },
    shaftShoulder: {
      symbol: "d_a",
      unit: "mm",
      meaning: "smallest outside of a shoulder on the shaft; 0 when not known",
    },
    housingShoulder: {
      symbol: "D_a",
      unit: "mm",
      meaning: "largest hole in a shoulder of the housing; 0 when not known",
    },
    dynamicRating: { symbol: "C_a", unit: "N", meaning: "dynamic load rating; 0 when not known" },
    staticRating: { symbol: "C0_a", unit: "N", meaning: "static load rating; 0 when not known" },
  },
  rows: [
    standard("51100", [10, 24, 9, 11, 0.3, 19, 15, 9950, 14000], "10000 and 15300 N"),
    standard("51101", [12, 26, 9, 13, 0.3, 21, 17, 10300, 15400], "10400 and 16600 N"),
    standard("51102", [15, 28, 9, 16, 0.3, 24, 19, 10500, 16800], "10600 and 18300 N"),
    standard("51103", [17, 30, 9, 18, 0.3, 26, 21, 10800, 18200], "11400 and 21200 N"),
    standard("51104", [20, 35, 10, 21, 0.3, 30, 25, 14200, 24700], "15100 and 29000 N"),
    standard("51105", [25, 42, 11, 26, 0.6, 36, 31, 18200, 37200], "19600 and 39000 N"),
    miniature("F3-8M", 3, 8, 3.5),
    miniature("F4-9M", 4, 9, 4),
    miniature("F5-10M", 5, 10, 4),
    miniature("F5-11M", 5, 11, 4.5),
    miniature("F6-12M", 6, 12, 4.5),
    miniature("F6-14M", 6, 14, 5),
    miniature("F7-13M", 7, 13, 4.5),
    miniature("F8-16M", 8, 16, 5),
    miniature("F8-22M", 8, 22, 7),
    miniature("F10-18M", 10, 18, 5.5),
  ],
  sketch: `
              |<-- d_a -->|        shoulder on the shaft, above
        |<------- D -------->|
        +------+  d  +------+  ---  shaft washer, grips the shaft with d
        |  ( ) |     |  ( ) |   H
        +-----+       +-----+  ---  housing washer, clears it with D1
              |<-D1-->|
            |<--- D_a --->|        hole in the housing's shoulder, below
        r_s: radius of the corners     C_a, C0_a: load turning, standing
`,
};
