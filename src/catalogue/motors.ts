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
};

/** Body, side of the bolt square, diameter of the bolt circle. */
type Face = [number, number, number];
/** Screw, hole diameter, hole depth. */
type Fixing = [string, number, number];
/** Pilot diameter and height, shaft diameter and length, radial load 20 from the face, axial load. */
type Shaft = [number, number, number, number, number, number];

function motor(key: string, face: Face, fixing: Fixing, shaft: Shaft, note: string): Row<Motor> {
  const [body, boltSquare, boltCircle] = face;
  const [screw, hole, holeDepth] = fixing;
  const [pilotDiameter, pilotHeight, shaftDiameter, shaftLength, radialLoad, axialLoad] = shaft;
  const front = { body, boltSquare, boltCircle, screw, hole, holeDepth, pilotDiameter, pilotHeight };
  const values = { ...front, shaftDiameter, shaftLength, radialLoad, axialLoad };
  return { key, values, source: "nema-ics-16", standing: "typical", from: "memory", note };
}

const DEPTH = "the depth of the tapped holes is not known: measure";

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
    radialLoad: { symbol: "F_r", unit: "N", meaning: "radial load on the shaft, 20 from the face" },
    axialLoad: { symbol: "F_a", unit: "N", meaning: "axial load on the shaft" },
  },
  rows: [
    motor("NEMA 11", [28.2, 23, 32.5], ["M2.5", 2.5, 0], [22, 2, 5, 20, 20, 10], `a list prints hole 3; ${DEPTH}`),
    motor("NEMA 14", [35.2, 26, 36.8], ["M3", 3, 0], [22, 2, 5, 20, 28, 10], `a list prints hole 4; ${DEPTH}`),
    motor("NEMA 16", [39.3, 31, 43.8], ["M3", 3, 0], [22, 2, 5, 20, 20, 10], `same square as NEMA 17; ${DEPTH}`),
    motor(
      "NEMA 17",
      [42.3, 31, 43.84],
      ["M3", 3, 4.5],
      [22, 2, 5, 22, 28, 10],
      "the standard has 4-40 UNC, metric motors M3; shafts 20 to 24 long; a maker gives 28 N and 10 N",
    ),
    motor(
      "NEMA 23",
      [57, 47.14, 66.68],
      ["M5", 5.1, 0],
      [38.1, 1.6, 6.35, 20.6, 75, 15],
      "through holes 5.0 to 5.2; faces 56.4 to 57.2; shaft 20.6 by the standard, sold to 24; 8 mm shafts too",
    ),
    motor(
      "NEMA 24",
      [60, 47.14, 66.68],
      ["M5", 5.2, 0],
      [38.1, 1.6, 8, 20, 75, 15],
      "through holes 4.5 (M4) to 5.2 (M5); some have a square of 49.96",
    ),
    motor(
      "NEMA 34",
      [86, 69.6, 98.43],
      ["M5", 6.5, 0],
      [73.02, 1.6, 9.53, 31.75, 220, 60],
      "through holes 5.5 to 6.6; a list rounds the square to 69.7; shafts of 12.7 and 14 by 37 are usual: measure",
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
`,
};
