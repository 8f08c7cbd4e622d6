import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A deep-groove ball bearing, shielded, as the plastic round it meets it. */
export type Bearing = {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  readonly innerLand: number;
  readonly outerLand: number;
  readonly cornerRadius: number;
  readonly dynamicRating: number;
  readonly staticRating: number;
};

/** Bore, outside diameter and shielded width of ISO 15, then the smallest corner radius, then C and C0. */
type Boundary = [number, number, number, number, number, number];

function valuesOf(boundary: Boundary, innerLand: number, outerLand: number): Bearing {
  const [bore, outside, width, cornerRadius, dynamicRating, staticRating] = boundary;
  return { bore, outside, width, innerLand, outerLand, cornerRadius, dynamicRating, staticRating };
}

/** What is said about a bearing besides its numbers. */
type More = Pick<Row, "note" | "differs">;

/** A bearing whose lands stand in a catalogue: inner land, then outer land. */
function listed(key: string, boundary: Boundary, lands: [number, number], more: More = {}): Row<Bearing> {
  const values = valuesOf(boundary, ...lands);
  return { key, values, source: "bearing-makers", standing: "published", from: "memory", ...more };
}

/** A bearing without an outer land in a catalogue: D - 0.2 (D - d); its inner land is an estimate too. */
function estimated(key: string, boundary: Boundary, innerLand: number, more: More = {}): Row<Bearing> {
  const [bore, outside] = boundary;
  const outerLand = Math.round((outside - 0.2 * (outside - bore)) * 100) / 100;
  const values = valuesOf(boundary, innerLand, outerLand);
  const note = `lands are estimates, measure them${more.note === undefined ? "" : `; ${more.note}`}`;
  return { key, values, source: "bearing-makers", standing: "typical", from: "memory", ...more, note };
}

/** Other catalogues, with C and C0 in N; the lower of each is used. */
function ratings(dynamicRating: number[], staticRating: number[]): More {
  return { differs: differing<Bearing>("lower", "other makers' catalogues", { dynamicRating, staticRating }) };
}

/** The land by the estimate d + 0.3 (D - d), where a remembered drawing has less. */
function land(estimate: number): More {
  const by = "the estimate d + 0.3 (D - d); a remembered drawing has less";
  return { differs: differing<Bearing>("lower", by, { innerLand: [estimate] }) };
}

const INCH = "inch size, R series; C and C0 are converted from lbf";

export const BEARINGS: Table<Bearing> = {
  name: "bearings",
  item: "bearing",
  title: "Deep-groove ball bearings",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore", source: "iso-15" },
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter", source: "iso-15" },
    width: { symbol: "B", unit: "mm", meaning: "width, shields included", source: "iso-15" },
    innerLand: { symbol: "d1", unit: "mm", meaning: "outside diameter of the inner ring's face" },
    outerLand: { symbol: "D2", unit: "mm", meaning: "inside diameter of the outer ring's face" },
    cornerRadius: { symbol: "r_s", unit: "mm", meaning: "corner radius of the rings" },
    dynamicRating: { symbol: "C", unit: "N", meaning: "dynamic load rating" },
    staticRating: { symbol: "C0", unit: "N", meaning: "static load rating" },
  },
  rows: [
    estimated("603", [3, 9, 5, 0.15, 570, 187], 4.8),
    estimated("604", [4, 12, 4, 0.2, 957, 349], 6.1, land(6.4)),
    estimated("605", [5, 14, 5, 0.2, 1329, 507], 7.7),
    estimated("606", [6, 17, 6, 0.3, 2263, 846], 8.2, land(9.3)),
    estimated("607", [7, 19, 6, 0.3, 2336, 896], 9.5, land(10.6)),
    listed("608", [8, 22, 7, 0.3, 3293, 1370], [12.1, 19.2], {
      differs: [
        ...differing<Bearing>("lower", "other makers' catalogues", {
          dynamicRating: [3295, 3450],
          staticRating: [1373, 1379],
        }),
        ...differing<Bearing>("maker", "a consumer page", { dynamicRating: [5900], staticRating: [1920] }),
      ],
    }),
    estimated("609", [9, 24, 7, 0.3, 3356, 1444], 13.5),
    estimated("623", [3, 10, 4, 0.15, 540, 180], 5.1, ratings([631, 640], [219, 230])),
    estimated("624", [4, 13, 5, 0.2, 936, 290], 6.7, ratings([1301], [488])),
    estimated("625", [5, 16, 5, 0.3, 1140, 380], 8.3, ratings([1729], [675])),
    estimated("626", [6, 19, 6, 0.3, 2336, 896], 9.5, land(9.9)),
    estimated("627", [7, 22, 7, 0.3, 3293, 1379], 11.5),
    estimated("628", [8, 24, 8, 0.3, 3350, 1430], 12.8),
    estimated("629", [9, 26, 8, 0.3, 4579, 1970], 14.1, {
      differs: differing<Bearing>("lower", "another catalogue", { cornerRadius: [0.6] }),
    }),
    estimated("634", [4, 16, 5, 0.3, 1340, 523], 7.6, ratings([1730], [670])),
    estimated("635", [5, 19, 6, 0.3, 2336, 896], 9.2),
    estimated("683", [3, 7, 3, 0.1, 390, 130], 4.2),
    estimated("684", [4, 9, 4, 0.1, 641, 227], 5.5),
    estimated("685", [5, 11, 5, 0.15, 716, 282], 6.8),
    estimated("686", [6, 13, 5, 0.15, 1082, 442], 8.1),
    estimated("687", [7, 14, 5, 0.15, 1173, 513], 9.1),
    estimated("688", [8, 16, 5, 0.2, 1252, 592], 10.4, {
      differs: [
        ...differing<Bearing>("usual", "sellers", { width: [4, 6] }),
        ...differing<Bearing>("lower", "other makers' catalogues", { dynamicRating: [1330, 1610] }),
      ],
    }),
    estimated("689", [9, 17, 5, 0.2, 1327, 668], 11.4),
    estimated("693", [3, 8, 4, 0.15, 560, 179], 4.5),
    estimated("694", [4, 11, 4, 0.15, 957, 349], 6.1),
    estimated("695", [5, 13, 4, 0.2, 1077, 432], 7.4),
    estimated("696", [6, 15, 5, 0.2, 1340, 523], 8.7, ratings([1730], [670])),
    estimated("697", [7, 17, 5, 0.3, 1605, 719], 10.0),
    estimated("698", [8, 19, 6, 0.3, 2237, 917], 11.3),
    estimated("699", [9, 20, 6, 0.3, 2467, 1081], 12.3),
    estimated("MR105", [5, 10, 4, 0.15, 432, 168], 6.5, { note: "ratings of low confidence" }),
    listed("6000", [10, 26, 8, 0.3, 4550, 1960], [14.8, 22.6]),
    listed("6001", [12, 28, 8, 0.3, 5100, 2390], [17.0, 24.8]),
    listed("6002", [15, 32, 9, 0.3, 5600, 2830], [20.5, 28.2]),
    listed("6003", [17, 35, 10, 0.3, 6000, 3250], [23.0, 31.4], ratings([6800], [3350])),
    listed("6004", [20, 42, 12, 0.6, 9400, 5000], [27.2, 37.2], ratings([9950], [5050])),
    listed("6005", [25, 47, 12, 0.6, 10100, 5850], [32.0, 42.2]),
    listed("6200", [10, 30, 9, 0.6, 5100, 2390], [17.0, 24.8]),
    listed("6201", [12, 32, 10, 0.6, 6100, 2750], [18.5, 27.4], ratings([6800, 7280], [3050, 3100])),
    listed("6202", [15, 35, 11, 0.6, 7650, 3600], [21.7, 30.4], ratings([7750], [3750])),
    listed("6203", [17, 40, 12, 0.6, 9550, 4600], [24.5, 35.0], ratings([9600], [4800])),
    estimated("6800", [10, 19, 5, 0.3, 1830, 925], 12.7),
    estimated("6801", [12, 21, 5, 0.3, 1920, 1040], 14.7),
    estimated("6802", [15, 24, 5, 0.3, 2080, 1260], 17.7),
    estimated("6803", [17, 26, 5, 0.3, 2230, 1460], 19.7),
    estimated("6900", [10, 22, 6, 0.3, 2700, 1270], 13.6, { note: "an inner land of 12.7 belongs to the 6800" }),
    estimated("6901", [12, 24, 6, 0.3, 2890, 1460], 15.6, { note: "an inner land of 14.7 belongs to the 6801" }),
    estimated("6902", [15, 28, 7, 0.3, 3650, 2000], 18.9, {
      differs: [
        ...differing<Bearing>("lower", "another catalogue", { dynamicRating: [4350], staticRating: [2260] }),
        ...differing<Bearing>("standard", "consumer pages, of the 6202 and the 6002", {
          outside: [35, 32],
          width: [11, 9],
        }),
      ],
    }),
    estimated("6903", [17, 30, 7, 0.3, 4650, 2580], 20.9),
    estimated("R4", [6.35, 15.875, 4.978, 0.3, 1481, 618], 9.21, { note: INCH }),
    estimated("R6", [9.525, 22.225, 7.142, 0.4, 3336, 1410], 13.34, { note: INCH }),
    estimated("R8", [12.7, 28.575, 7.938, 0.4, 5120, 2393], 17.46, { note: INCH }),
  ],
  sketch: `
        |<------------- D ------------->|
        |      |<------ D2 ------>|     |
        |      |    |<- d1 ->|    |     |
        +------+----+--+  +--+----+-----+  ---
        |outer |    |  |  |  |    |outer|   B
        +------+----+--+  +--+----+-----+  ---
       r_s             |d |                r_s: radius of the rings' corners
        C, C0: what it carries turning, and standing still
`,
};
