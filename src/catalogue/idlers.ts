import type { Row, Table } from "../core/table.ts";

/** An idler that turns on a bolt. No teeth: smooth. A run width of 0 means not known. */
export type Idler = {
  readonly bore: number;
  readonly teeth: number;
  readonly runDiameter: number;
  readonly flangeDiameter: number;
  readonly height: number;
  readonly runWidth: number;
  readonly beltWidth: number;
};

type Numbers = [number, number, number, number, number, number, number];

function valuesOf([bore, teeth, runDiameter, flangeDiameter, height, runWidth, beltWidth]: Numbers): Idler {
  return { bore, teeth, runDiameter, flangeDiameter, height, runWidth, beltWidth };
}

function listed(bore: number, height: number, beltWidth: number): Row<Idler> {
  const values = valuesOf([bore, 20, 12.22, 15, height, 0, beltWidth]);
  const note = "an industrial list; the width between the flanges is not known: measure";
  const key = `20 teeth, bore ${bore}, ${height} high`;
  return { key, values, source: "belt-makers", standing: "published", from: "seen", note };
}

function usual(key: string, numbers: Numbers, note: string): Row<Idler> {
  const facts = { source: "common-practice", standing: "typical", from: "memory" } as const;
  return { key, values: valuesOf(numbers), ...facts, note };
}

const FLANGE = "flange 16 to 18, height 8.5 to 9";
const SMALL_BACK = "12 is too small for the back of a belt, which wants 14";
const TIGHT = "no side play for a belt 6 wide: put a shim of 0.5 to 1 between the inner rings";
const PAIR = "flanges outward, sizes from flanged bearings";

export const IDLERS: Table<Idler> = {
  name: "idlers",
  item: "idler",
  title: "Idlers, 2 mm pitch and smooth",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore" },
    teeth: { symbol: "z", unit: "", meaning: "number of teeth; 0 when smooth" },
    runDiameter: { symbol: "D_r", unit: "mm", meaning: "diameter the belt runs on, over the teeth" },
    flangeDiameter: { symbol: "D_f", unit: "mm", meaning: "flange diameter" },
    height: { symbol: "H_i", unit: "mm", meaning: "height over the inner rings" },
    runWidth: { symbol: "w_t", unit: "mm", meaning: "width between the flanges; 0 when not known" },
    beltWidth: { symbol: "w_b", unit: "mm", meaning: "widest belt" },
  },
  rows: [
    usual("smooth, bore 5", [5, 0, 12, 18, 8.5, 7, 6], `${FLANGE}; ${SMALL_BACK}`),
    usual("smooth, bore 3", [3, 0, 12, 18, 8.5, 7, 6], `${FLANGE}; ${SMALL_BACK}`),
    usual("20 teeth, bore 5", [5, 20, 12.22, 18, 8.5, 7, 6], FLANGE),
    usual("20 teeth, bore 3", [3, 20, 12.22, 18, 8.5, 7, 6], FLANGE),
    usual("16 teeth, bore 3", [3, 16, 9.68, 13, 8.5, 7, 6], "very small bearings; wears the belt"),
    usual("20 teeth, bore 5, wide", [5, 20, 12.22, 18, 12.5, 10.5, 10], "flange 16 to 18, height 12.5 to 13"),
    ...[3, 5].flatMap((bore) => [listed(bore, 10, 6), listed(bore, 14, 9), listed(bore, 16, 12)]),
    usual("two F623", [3, 0, 10, 11.5, 8, 6, 3], `${PAIR}; ${TIGHT}; too small for the back of a belt`),
    usual("two F604", [4, 0, 12, 13.5, 8, 6, 3], `${PAIR}; ${TIGHT}; too small for the back of a belt`),
    usual("two F624", [4, 0, 13, 15, 10, 8, 6], `${PAIR}; too small for the back of a belt, which wants 14`),
    usual("two F625", [5, 0, 16, 18, 10, 8, 6], PAIR),
    usual("two F695", [5, 0, 13, 15, 8, 6, 3], `${PAIR}; ${TIGHT}; too small for the back of a belt`),
    usual("two F688", [8, 0, 16, 18, 10, 7.8, 6], PAIR),
    usual("two F608", [8, 0, 22, 25, 14, 11, 10], PAIR),
  ],
  sketch: `
        |<------ D_f ------>|
        +------+  d  +------+   ---
        +-+    |     |    +-+    |    ---
          |    |     |    |     H_i   w_t     w_b: widest belt between them
        +-+    |     |    +-+    |    ---
        +------+     +------+   ---           z: teeth, 0 when smooth
          |<---- D_r ---->|
`,
};
