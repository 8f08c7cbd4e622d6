import type { Row, Table } from "../core/table.ts";

/** A flanged nut for a lead screw. */
export type LeadNut = {
  readonly body: number;
  readonly flange: number;
  readonly flangeThickness: number;
  readonly length: number;
  readonly boss: number;
  readonly holeCircle: number;
  readonly holeCount: number;
  readonly hole: number;
  readonly screw: string;
  readonly forScrews: string;
};

/** Body, flange diameter, flange thickness, length, boss, hole circle, number of holes, hole. */
type Numbers = [number, number, number, number, number, number, number, number];

function leadNut(key: string, numbers: Numbers, screw: string, forScrews: string, note: string): Row<LeadNut> {
  const [body, flange, flangeThickness, length, boss, holeCircle, holeCount, hole] = numbers;
  const values = { body, flange, flangeThickness, length, boss, holeCircle, holeCount, hole, screw, forScrews };
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

const T8 = "Tr8x2, Tr8x4(P2), Tr8x8(P2)";
const LEAD = "the nut's lead must be the screw's: count the starts; body 10.0 to 10.2";
const SERIES =
  "of low confidence, a makers' series; no boss; small machines have other outlines that no two sellers share: " +
  "measure before you draw";

export const LEAD_NUTS: Table<LeadNut> = {
  name: "lead-nuts",
  item: "lead nut",
  title: "Flanged nuts for lead screws",
  fields: {
    body: { symbol: "d_n", unit: "mm", meaning: "diameter of the body" },
    flange: { symbol: "D_n", unit: "mm", meaning: "flange diameter; 0 when there is none" },
    flangeThickness: { symbol: "t_n", unit: "mm", meaning: "flange thickness; 0 when there is none" },
    length: { symbol: "L_n", unit: "mm", meaning: "length over all" },
    boss: {
      symbol: "h_b",
      unit: "mm",
      meaning: "how far the boss stands out on the flange's side; 0 when there is none",
    },
    holeCircle: { symbol: "d_c", unit: "mm", meaning: "circle of the holes; 0 when there is none" },
    holeCount: { symbol: "n", unit: "", meaning: "number of holes; 0 when there is none" },
    hole: { symbol: "d_h", unit: "mm", meaning: "hole; 0 when there is none" },
    screw: { symbol: "M_n", unit: "", meaning: "screw through the holes, or none" },
    forScrews: { symbol: "Tr", unit: "", meaning: "lead screws it is sold for" },
  },
  rows: [
    leadNut("T8 brass", [10.2, 22, 3.5, 15, 1.5, 16, 4, 3.5], "M3", T8, LEAD),
    leadNut("T8 POM", [10.2, 22, 3.5, 15, 1.5, 16, 4, 3.5], "M3", T8, LEAD),
    leadNut(
      "T8 sprung",
      [10.2, 22, 3.5, 35, 1.5, 16, 4, 3.5],
      "M3",
      T8,
      `${LEAD}; two halves and a spring, 28 to 35 long`,
    ),
    leadNut(
      "T8 barrel",
      [12, 0, 0, 16, 0, 0, 0, 0],
      "none",
      "Tr8x8(P2)",
      "brass or POM, no flange: glued or clamped; body, length and screw were seen on a seller's page",
    ),
    leadNut("Tr10 bronze", [25, 42, 10, 25, 0, 34, 6, 5], "M5", "Tr10x2, Tr10x3", SERIES),
    leadNut("Tr12 bronze", [28, 48, 12, 35, 0, 38, 6, 6], "M6", "Tr12x3", `${SERIES}; 35 to 44 long`),
    leadNut("Tr16 bronze", [28, 48, 12, 35, 0, 38, 6, 6], "M6", "Tr14x4, Tr16x4, Tr18x4", SERIES),
  ],
  sketch: `
                    |< d_n >|
                    +-------+           ---
                    |  Tr   |            |
        +--|-|------+-------+------|-|--+    ---
        |  | |              :      | |  | |  t_n     n holes of d_h for M_n
        +--|-|------+-------+------|-|--+    ---
                    |       |           L_n  h_b
                    +-------+           ---  ---
           |<--------- d_c --------->|        circle through the holes
        |<------------- D_n ----------->|
`,
};
