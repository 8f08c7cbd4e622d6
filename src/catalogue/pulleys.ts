import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A flanged pulley with a hub, for a belt 6 wide. */
export type Pulley = {
  readonly teeth: number;
  readonly pitch: number;
  readonly flangeDiameter: number;
  readonly toothWidth: number;
  readonly flangeThickness: number;
  readonly hubLength: number;
  readonly height: number;
  readonly hubDiameter: number;
  readonly bore: number;
  readonly setScrew: string;
  readonly setScrewCount: number;
  readonly setScrewFromEnd: number;
};

/** Flange diameter, hub length, hub diameter, bore. */
type Sizes = [number, number, number, number];

function pulley(
  teeth: number,
  [flangeDiameter, hubLength, hubDiameter, bore]: Sizes,
  note: string,
  differs: Disagreement[],
): Row<Pulley> {
  const width = { toothWidth: 7, flangeThickness: 1, hubLength, height: hubLength + 9 };
  const screws = { setScrew: "M3", setScrewCount: 2, setScrewFromEnd: hubLength / 2 };
  const values = { teeth, pitch: 2, flangeDiameter, ...width, hubDiameter, bore, ...screws };
  const facts = { source: "common-practice", standing: "typical", from: "memory", note, differs } as const;
  return { key: `${teeth} teeth 2 mm`, values, ...facts };
}

const BORES = "bores of 5, 6.35 and 8";
const FLANGE = `${BORES}; flange estimated as outside diameter + 4`;
const LARGE = `${BORES}, from 40 teeth also 10`;

/** What sellers and an inspection page have. */
const sold = (others: Partial<Record<keyof Pulley, (number | string)[]>>) =>
  differing<Pulley>("usual", "sellers and a machine maker's inspection page", others);
const HIGH = sold({ height: [16] });
const M4 = sold({ height: [16], setScrew: ["M4"] });

export const PULLEYS: Table<Pulley> = {
  name: "pulleys",
  item: "pulley",
  title: "Pulleys, 2 mm pitch, for belts 6 wide",
  fields: {
    teeth: { symbol: "z", unit: "", meaning: "number of teeth" },
    pitch: { symbol: "P", unit: "mm", meaning: "pitch" },
    flangeDiameter: { symbol: "D_f", unit: "mm", meaning: "flange diameter" },
    toothWidth: { symbol: "w_t", unit: "mm", meaning: "width between the flanges" },
    flangeThickness: { symbol: "t_f", unit: "mm", meaning: "flange thickness" },
    hubLength: { symbol: "h_hub", unit: "mm", meaning: "hub length" },
    height: { symbol: "H_p", unit: "mm", meaning: "height over all" },
    hubDiameter: { symbol: "D_h", unit: "mm", meaning: "hub diameter" },
    bore: { symbol: "d", unit: "mm", meaning: "bore" },
    setScrew: { symbol: "M_s", unit: "", meaning: "thread of the set screws" },
    setScrewCount: { symbol: "n_s", unit: "", meaning: "number of set screws" },
    setScrewFromEnd: { symbol: "h_ss", unit: "mm", meaning: "set-screw axis from the hub's end" },
  },
  rows: [
    pulley(16, [13, 7, 13, 5], "some have no hub", sold({ flangeDiameter: [13.7, 14] })),
    pulley(20, [16, 7, 16, 5], BORES, sold({ flangeDiameter: [15, 16.2], height: [14] })),
    pulley(24, [18.8, 8, 16, 8], FLANGE, HIGH),
    pulley(30, [22.6, 8, 16, 8], FLANGE, HIGH),
    pulley(32, [23.9, 8, 16, 8], FLANGE, M4),
    pulley(36, [27, 8, 16, 8], BORES, sold({ flangeDiameter: [26, 26.4], height: [16], setScrew: ["M4"] })),
    pulley(40, [28, 7, 16, 8], LARGE, sold({ flangeDiameter: [29], height: [17], setScrew: ["M4"] })),
    pulley(48, [34, 8, 16, 8], `${LARGE}; flange estimated`, M4),
    pulley(60, [42, 8, 16, 8], LARGE, sold({ flangeDiameter: [41.7], height: [16], setScrew: ["M4"] })),
    pulley(72, [49.3, 8, 16, 8], `${LARGE}; flange estimated`, M4),
    pulley(80, [54.4, 8, 16, 8], `${LARGE}; flange estimated`, M4),
  ],
  sketch: `
               |<-- D_h -->|
               +---+   +---+       ---     ---  hub's end
               |   |   |   |        |      h_ss
               |   | d | = | M_s   h_hub   ---  axis of the n_s set screws
               |   |   |   |        |
        +------+---+---+---+------+ ---    ---
        +-+----|---|   |---|----+-+        t_f
          |    |   |   |   |    |   w_t    z teeth, P apart
        +-+----|---|   |---|----+-+        t_f
        +----------+   +----------+ ---    H_p: from end to end
        |<--------- D_f --------->|
`,
};
