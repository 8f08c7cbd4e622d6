import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A stepping motor's face. A hole depth of 0 means a through hole, or a depth that is not known. */
export type Motor = {
  readonly body: number;
  readonly boltSquare: number;
  readonly boltCircle: number;
  readonly screw: string;
  readonly hole: number;
  readonly holeDepth: number;
  readonly pilotDiameter: number;
  readonly pilotHeight: number;
  readonly shaftDiameter: number;
  readonly shaftLength: number;
  readonly radialLoad: number;
  readonly axialLoad: number;
  readonly shaftFlat: number;
  readonly bodyShort: number;
  readonly bodyLong: number;
  readonly torqueSmall: number;
  readonly torqueLarge: number;
};

/** Body, side of the bolt square, diameter of the bolt circle. */
type Face = [number, number, number];
/** Screw, hole diameter, hole depth. */
type Fixing = [string, number, number];
/** Pilot diameter and height, shaft diameter and length, radial load 20 from the face, axial load. */
type Shaft = [number, number, number, number, number, number];

/** Across the shaft's flat, shortest and longest body, smallest and largest holding torque. */
type Sold = [number, number, number, number, number];

function motor(key: string, numbers: [Face, Fixing, Shaft, Sold], note: string, differs: Disagreement[]): Row<Motor> {
  const [face, fixing, shaft, [shaftFlat, bodyShort, bodyLong, torqueSmall, torqueLarge]] = numbers;
  const [body, boltSquare, boltCircle] = face;
  const [screw, hole, holeDepth] = fixing;
  const [pilotDiameter, pilotHeight, shaftDiameter, shaftLength, radialLoad, axialLoad] = shaft;
  const front = { body, boltSquare, boltCircle, screw, hole, holeDepth, pilotDiameter, pilotHeight };
  const sold = { shaftFlat, bodyShort, bodyLong, torqueSmall, torqueLarge };
  const values = { ...front, shaftDiameter, shaftLength, radialLoad, axialLoad, ...sold };
  return { key, values, source: "nema-ics-16", standing: "typical", from: "memory", note, differs };
}

const DEPTH = "the depth of the tapped holes is not known: measure";

const list = (settled: "usual" | "formula", others: Partial<Record<keyof Motor, (number | string)[]>>) =>
  differing<Motor>(settled, "a list of the standard's sizes", others);
const sold = (others: Partial<Record<keyof Motor, (number | string)[]>>) =>
  differing<Motor>("usual", "motors as they are sold", others);

export const MOTORS: Table<Motor> = {
  name: "motors",
  item: "motor",
  title: "Motor faces",
  fields: {
    body: { symbol: "B", unit: "mm", meaning: "side of the face" },
    boltSquare: { symbol: "b_m", unit: "mm", meaning: "side of the square of holes" },
    boltCircle: { symbol: "d_c", unit: "mm", meaning: "circle through the holes" },
    screw: { symbol: "M_m", unit: "", meaning: "thread of the screws" },
    hole: { symbol: "d_h", unit: "mm", meaning: "hole, or the thread when it is tapped" },
    holeDepth: { symbol: "t_h", unit: "mm", meaning: "depth of tapped holes; 0 when through or not known" },
    pilotDiameter: { symbol: "d_p", unit: "mm", meaning: "diameter of the pilot" },
    pilotHeight: { symbol: "h_p", unit: "mm", meaning: "height of the pilot" },
    shaftDiameter: { symbol: "d", unit: "mm", meaning: "shaft diameter" },
    shaftLength: { symbol: "l", unit: "mm", meaning: "shaft length from the face" },
    radialLoad: {
      symbol: "F_r",
      unit: "N",
      meaning: "radial load on the shaft, 20 from the face",
      source: "motor-makers",
    },
    axialLoad: { symbol: "F_a", unit: "N", meaning: "axial load on the shaft", source: "motor-makers" },
    shaftFlat: {
      symbol: "d_s",
      unit: "mm",
      meaning: "across the flat of the shaft; 0 when it is usually round or keyed",
      source: "common-practice",
    },
    bodyShort: { symbol: "L_1", unit: "mm", meaning: "shortest body", source: "common-practice" },
    bodyLong: { symbol: "L_2", unit: "mm", meaning: "longest body", source: "common-practice" },
    torqueSmall: { symbol: "T_1", unit: "N·m", meaning: "smallest holding torque sold", source: "common-practice" },
    torqueLarge: { symbol: "T_2", unit: "N·m", meaning: "largest holding torque sold", source: "common-practice" },
  },
  rows: [
    motor(
      "NEMA 8",
      [
        [20.3, 16, 22.6],
        ["M2", 2, 0],
        [15, 1.5, 4, 10, 10, 4],
        [3.5, 28, 42, 0.015, 0.04],
      ],
      `${DEPTH}; a small belt pulley has almost no set-screw length on this shaft`,
      sold({ boltSquare: [15.4], shaftLength: [20], radialLoad: [15] }),
    ),
    motor(
      "NEMA 11",
      [
        [28.2, 23, 32.5],
        ["M2.5", 2.5, 0],
        [22, 2, 5, 20, 20, 10],
        [4.5, 32, 51, 0.05, 0.14],
      ],
      DEPTH,
      list("usual", { hole: [3] }),
    ),
    motor(
      "NEMA 14",
      [
        [35.2, 26, 36.8],
        ["M3", 3, 0],
        [22, 2, 5, 20, 28, 10],
        [4.5, 26, 52, 0.1, 0.4],
      ],
      DEPTH,
      [...list("usual", { hole: [4] }), ...sold({ shaftLength: [24] })],
    ),
    motor(
      "NEMA 16",
      [
        [39.3, 31, 43.8],
        ["M3", 3, 0],
        [22, 2, 5, 20, 20, 10],
        [4.5, 20, 38, 0.08, 0.25],
      ],
      `same square as NEMA 17; ${DEPTH}`,
      sold({ shaftLength: [24] }),
    ),
    motor(
      "NEMA 17",
      [
        [42.3, 31, 43.84],
        ["M3", 3, 4.5],
        [22, 2, 5, 22, 28, 10],
        [4.5, 20, 60, 0.16, 0.65],
      ],
      "28 N and 10 N are a maker's; bodies of 28 to 45 give 0.12 to 0.46 N·m, 48 gives 0.59",
      [...list("usual", { screw: ["4-40 UNC"], shaftLength: [24] }), ...sold({ shaftLength: [20] })],
    ),
    motor(
      "NEMA 23",
      [
        [57, 47.14, 66.68],
        ["M5", 5.1, 0],
        [38.1, 1.6, 6.35, 20.6, 75, 15],
        [5.8, 41, 112, 0.5, 3],
      ],
      "through holes, the shaft length is the standard's",
      sold({ body: [56.4, 57.2], screw: ["M4"], hole: [5, 5.2], shaftDiameter: [8], shaftLength: [20, 24] }),
    ),
    motor(
      "NEMA 24",
      [
        [60, 47.14, 66.68],
        ["M5", 5.2, 0],
        [38.1, 1.6, 8, 20, 75, 15],
        [7.5, 65, 100, 1.2, 4],
      ],
      "through holes; a frame of the trade",
      sold({ boltSquare: [49.96], screw: ["M4"], hole: [4.5], shaftLength: [25] }),
    ),
    motor(
      "NEMA 34",
      [
        [86, 69.6, 98.43],
        ["M5", 6.5, 0],
        [73.02, 1.6, 9.53, 31.75, 220, 60],
        [0, 66, 150, 2.5, 13],
      ],
      "through holes; shafts of 12.7 and 14 have a key or a flat of 13",
      [
        ...list("formula", { boltSquare: [69.7] }),
        ...sold({ screw: ["M6"], hole: [5.5, 6.6], shaftDiameter: [12.7, 14], shaftLength: [30, 37] }),
      ],
    ),
  ],
  sketch: `
        |<------- B -------->|            |<- l ->|
        +--------------------+      +-----+
        | o     ____       o |      |     |-+  h_p
        |     /  _   \\       |      |     | |=======  d
        |    ( ( d )  ) d_p  |      |     |-+   ^ F_r   -> F_a
        |     \\  ~   /       |      |     |
        | o     ~~~~       o |      +-----+
        +--------------------+     holes: M_m, d_h, t_h deep
          |<--- b_m --->|          d_c: circle through them
        d_s: over the flat    L_1, L_2: bodies    T_1, T_2: holding torque
`,
};
