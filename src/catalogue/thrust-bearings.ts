import { differing } from "../core/disagreement.ts";
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

/** What the other maker has: shoulders of shaft and housing, ratings Ca and C0a. */
type Other = [number, number, number, number];

function standard(key: string, numbers: Numbers, [shaft, housing, dynamic, still]: Other): Row<ThrustBearing> {
  const by = "another maker's catalogue";
  const differs = [
    ...differing<ThrustBearing>("higher", by, { shaftShoulder: [shaft] }),
    ...differing<ThrustBearing>("lower", by, { housingShoulder: [housing] }),
    ...differing<ThrustBearing>("lower", by, { dynamicRating: [dynamic], staticRating: [still] }),
  ];
  return { key, values: valuesOf(numbers), source: "bearing-makers", standing: "published", from: "memory", differs };
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
    bore: { symbol: "d", unit: "mm", meaning: "bore of the shaft washer", source: "iso-104" },
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter", source: "iso-104" },
    height: { symbol: "H", unit: "mm", meaning: "height", source: "iso-104" },
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
    standard("51100", [10, 24, 9, 11, 0.3, 19, 15, 9950, 14000], [18, 16, 10000, 15300]),
    standard("51101", [12, 26, 9, 13, 0.3, 21, 17, 10300, 15400], [20, 18, 10400, 16600]),
    standard("51102", [15, 28, 9, 16, 0.3, 24, 19, 10500, 16800], [23, 20, 10600, 18300]),
    standard("51103", [17, 30, 9, 18, 0.3, 26, 21, 10800, 18200], [25, 22, 11400, 21200]),
    standard("51104", [20, 35, 10, 21, 0.3, 30, 25, 14200, 24700], [29, 26, 15100, 29000]),
    standard("51105", [25, 42, 11, 26, 0.6, 36, 31, 18200, 37200], [35, 32, 19600, 39000]),
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
