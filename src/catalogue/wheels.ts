import type { Row, Table } from "../core/table.ts";

/** A V wheel with two bearings in it. `axisToBarFace` 0 means not known: measure over the wheels instead. */
export type Wheel = {
  readonly outside: number;
  readonly width: number;
  readonly overBearings: number;
  readonly innerLand: number;
  readonly outerLand: number;
  readonly axisToBarFace: number;
  readonly boltThread: string;
  readonly forceLimit: number;
};

type Numbers = [number, number, number, number, number, number, number];

function wheel(key: string, numbers: Numbers, note: string): Row<Wheel> {
  const [outside, width, overBearings, innerLand, outerLand, axisToBarFace, forceLimit] = numbers;
  const values = { outside, width, overBearings, innerLand, outerLand, axisToBarFace, boltThread: "M5", forceLimit };
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

const OLDER = "an older form on two 623 and an axle of 3 mm is sold too: no sizes are published, measure";

export const WHEELS: Table<Wheel> = {
  name: "wheels",
  item: "wheel",
  title: "V wheels for grooved bars",
  fields: {
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter" },
    width: { symbol: "w", unit: "mm", meaning: "width of the wheel" },
    overBearings: { symbol: "w_o", unit: "mm", meaning: "width over both bearings and the shim between them" },
    innerLand: { symbol: "d1", unit: "mm", meaning: "outside diameter of the bearings' inner ring face" },
    outerLand: { symbol: "D2", unit: "mm", meaning: "inside diameter of the bearings' outer ring face" },
    axisToBarFace: { symbol: "o_w", unit: "mm", meaning: "wheel axis to the bar's face; 0 means not known, measure" },
    boltThread: { symbol: "M_b", unit: "", meaning: "axle bolt" },
    forceLimit: { symbol: "F_w", unit: "N", meaning: "force that leaves no flat spot while it stands" },
  },
  rows: [
    wheel(
      "V 23.9",
      [23.9, 10.2, 11, 8.4, 13.5, 9.85, 100],
      `two 625 with 1.0 between them; POM, PC takes 150 N; ${OLDER}`,
    ),
    wheel("V 24.4", [24.4, 11, 11, 8.4, 13.5, 10.1, 100], "sizes vary by 0.2; o_w holds for this diameter only; POM"),
    wheel(
      "V 15.2 mini",
      [15.2, 8.8, 9, 6.5, 9, 0, 60],
      "two MR105 with 1.0 between them; o_w is not known: measure over the wheels; force by the lower practice figure",
    ),
  ],
  sketch: `
         |<----- D ----->|            |<-- w -->|
            _________                  ________
          /           \\               /        \\  w_o: over the bearings
         |      o      |   ---      __|  D2 d1 |__     and the ring between
          \\           /    o_w        |        |  D2, d1: lands of a bearing
            ---------                 \\        /  M_b: axle bolt
        ====bar's face====  ---        --------   F_w: force across the axis
`,
};
