import type { Row, Table } from "../core/table.ts";

/** What a shaft, a housing and a spacer beside a ball bearing must keep to. */
export type BearingShoulder = {
  readonly openWidth: number;
  readonly shaftShoulder: number;
  readonly housingShoulder: number;
  readonly fillet: number;
  readonly spacer: number;
  readonly flangeDiameter: number;
  readonly flangeWidth: number;
};

/** Width without shields, shoulders of shaft and housing, largest fillet, spacer, flange diameter and width. */
type Numbers = [number, number, number, number, number, number, number];

function shoulder(key: string, numbers: Numbers): Row<BearingShoulder> {
  const [openWidth, shaftShoulder, housingShoulder, fillet, spacer, flangeDiameter, flangeWidth] = numbers;
  const round = { shaftShoulder, housingShoulder, fillet, spacer };
  const values = { openWidth, ...round, flangeDiameter, flangeWidth };
  const facts = { source: "din-5418", standing: "typical", from: "memory" } as const;
  return { key, values, ...facts, note: "the spacer stays below every inner land that was met; measure the flange" };
}

export const BEARING_SHOULDERS: Table<BearingShoulder> = {
  name: "bearing-shoulders",
  item: "bearing",
  title: "What stands beside a ball bearing",
  fields: {
    openWidth: { symbol: "B_o", unit: "mm", meaning: "width without shields", source: "bearing-makers" },
    shaftShoulder: { symbol: "d_a", unit: "mm", meaning: "smallest shoulder on the shaft" },
    housingShoulder: { symbol: "D_a", unit: "mm", meaning: "largest hole in the shoulder of the housing" },
    fillet: { symbol: "r_a", unit: "mm", meaning: "largest fillet in the corner of a shoulder" },
    spacer: {
      symbol: "d_sp",
      unit: "mm",
      meaning: "outside of a spacer that touches the inner ring only",
      source: "common-practice",
    },
    flangeDiameter: {
      symbol: "D_f",
      unit: "mm",
      meaning: "flange diameter of the F form; 0 when none is known",
      source: "bearing-makers",
    },
    flangeWidth: {
      symbol: "b_f",
      unit: "mm",
      meaning: "flange width of the F form; 0 when none is known",
      source: "bearing-makers",
    },
  },
  rows: [
    shoulder("603", [3, 4.2, 7.8, 0.15, 4.5, 0, 0]),
    shoulder("604", [4, 5.4, 10.6, 0.2, 5.9, 13.5, 1]),
    shoulder("605", [5, 6.4, 12.6, 0.2, 7.1, 16, 1]),
    shoulder("606", [6, 8, 15, 0.3, 8.1, 19, 1.2]),
    shoulder("607", [6, 9, 17, 0.3, 9.3, 22, 1.5]),
    shoulder("608", [7, 10, 20, 0.3, 11.1, 25, 1.5]),
    shoulder("609", [7, 11, 22, 0.3, 12.2, 0, 0]),
    shoulder("623", [4, 4.2, 8.8, 0.15, 4.7, 11.5, 1]),
    shoulder("624", [5, 5.4, 11.6, 0.2, 6.1, 15, 1]),
    shoulder("625", [5, 7, 14, 0.3, 7.7, 18, 1]),
    shoulder("626", [6, 8, 17, 0.3, 8.9, 22, 1.5]),
    shoulder("627", [7, 9, 20, 0.3, 10.2, 25, 1.5]),
    shoulder("628", [8, 10, 22, 0.3, 11.4, 0, 0]),
    shoulder("629", [8, 11, 24, 0.3, 12.6, 0, 0]),
    shoulder("634", [5, 6, 14, 0.3, 6.8, 0, 0]),
    shoulder("635", [6, 7, 17, 0.3, 8.1, 0, 0]),
    shoulder("683", [2, 3.8, 6.2, 0.1, 4, 8.1, 0.8]),
    shoulder("684", [2.5, 4.8, 8.2, 0.1, 5.1, 10.3, 1]),
    shoulder("685", [3, 6.2, 9.8, 0.15, 6.5, 12.5, 1]),
    shoulder("686", [3.5, 7.2, 11.8, 0.15, 7.7, 15, 1.1]),
    shoulder("687", [3.5, 8.2, 12.8, 0.15, 8.6, 16, 1.1]),
    shoulder("688", [4, 9.4, 14.6, 0.2, 9.9, 18, 1.1]),
    shoulder("689", [4, 10.4, 15.6, 0.2, 10.9, 19, 1.1]),
    shoulder("693", [3, 4.2, 6.8, 0.15, 4.3, 9.5, 0.9]),
    shoulder("694", [4, 5.2, 9.8, 0.15, 5.7, 12.5, 1]),
    shoulder("695", [4, 6.4, 11.6, 0.2, 6.9, 15, 1]),
    shoulder("696", [5, 7.4, 13.6, 0.2, 8.1, 17, 1.2]),
    shoulder("MR105", [3, 6.2, 8.8, 0.15, 6.3, 11.6, 0.8]),
    shoulder("697", [5, 9, 15, 0.3, 9.5, 19, 1.2]),
    shoulder("698", [6, 10, 17, 0.3, 10.7, 22, 1.5]),
    shoulder("699", [6, 11, 18, 0.3, 11.7, 23, 1.5]),
    shoulder("6000", [8, 12, 24, 0.3, 13.4, 0, 0]),
    shoulder("6001", [8, 14, 26, 0.3, 15.4, 0, 0]),
    shoulder("6002", [9, 17, 30, 0.3, 18.6, 0, 0]),
    shoulder("6003", [10, 19, 33, 0.3, 20.6, 0, 0]),
    shoulder("6004", [12, 24.2, 37.8, 0.6, 25.4, 0, 0]),
    shoulder("6005", [12, 29.2, 42.8, 0.6, 30.4, 0, 0]),
    shoulder("6200", [9, 14.2, 25.8, 0.6, 15.5, 0, 0]),
    shoulder("6201", [10, 16.2, 27.8, 0.6, 17.2, 0, 0]),
    shoulder("6202", [11, 19.2, 30.8, 0.6, 19.9, 0, 0]),
    shoulder("6203", [12, 21.2, 35.8, 0.6, 22.4, 0, 0]),
    shoulder("6800", [5, 12, 17, 0.3, 12.3, 21, 1]),
    shoulder("6801", [5, 14, 19, 0.3, 14.3, 0, 0]),
    shoulder("6802", [5, 17, 22, 0.3, 17.4, 0, 0]),
    shoulder("6803", [5, 19, 24, 0.3, 19.4, 0, 0]),
    shoulder("6900", [6, 12, 20, 0.3, 12.8, 25, 1.5]),
    shoulder("6901", [6, 14, 22, 0.3, 14.8, 0, 0]),
    shoulder("6902", [7, 17, 26, 0.3, 17.9, 0, 0]),
    shoulder("6903", [7, 19, 28, 0.3, 19.9, 0, 0]),
    shoulder("R4", [4.978, 8.35, 13.88, 0.3, 8.8, 0, 0]),
    shoulder("R6", [5.558, 11.93, 19.83, 0.4, 12.6, 0, 0]),
    shoulder("R8", [6.35, 15.1, 26.18, 0.4, 16.2, 0, 0]),
  ],
  sketch: `
        |<----------- D_a ---------->|       hole below the outer ring
        |     |<--- d_a --->|        |       collar on the shaft
        |     |   d_sp      |        |       spacer: between d_a and the land
     +--+     +---+  +--+   +-+      +--+
     |outer|  |inner|  |inner|  |outer  |    B_o: width without shields
     +-----+--+-----+  +-----+--+-------+    r_a: fillet in the corners
     |<----- D_f ------>|  b_f               flange of the F form
`,
};
