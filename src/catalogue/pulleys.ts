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

function pulley(teeth: number, [flangeDiameter, hubLength, hubDiameter, bore]: Sizes, note: string): Row<Pulley> {
  const width = { toothWidth: 7, flangeThickness: 1, hubLength, height: hubLength + 9 };
  const screws = { setScrew: "M3", setScrewCount: 2, setScrewFromEnd: hubLength / 2 };
  const values = { teeth, pitch: 2, flangeDiameter, ...width, hubDiameter, bore, ...screws };
  return { key: `${teeth} teeth 2 mm`, values, source: "common-practice", standing: "typical", from: "memory", note };
}

const HIGH = "sold 16 and 17 high, with bores of 5, 6.35 and 8";
const FLANGE = "flange estimated as outside diameter + 4";

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
    pulley(16, [13, 7, 13, 5], "flange 13 to 14, hub 13 or none"),
    pulley(20, [16, 7, 16, 5], "flange 15 to 16, height 14 to 16; bores of 5, 6.35 and 8"),
    pulley(24, [18.8, 8, 16, 8], `${HIGH}; ${FLANGE}`),
    pulley(30, [22.6, 8, 16, 8], `${HIGH}; ${FLANGE}`),
    pulley(32, [23.9, 8, 16, 8], `${HIGH}; ${FLANGE}; M4 set screws also sold`),
    pulley(36, [27, 8, 16, 8], `${HIGH}; flange 26 to 27; M4 set screws also sold`),
    pulley(40, [28, 7, 16, 8], `${HIGH}: the hub is 1 longer then; M4 set screws also sold`),
    pulley(48, [34, 8, 16, 8], `${HIGH}; ${FLANGE}; M4 set screws also sold`),
    pulley(60, [42, 8, 16, 8], `${HIGH}; M4 set screws also sold`),
    pulley(72, [49.3, 8, 16, 8], `${HIGH}; ${FLANGE}; M4 set screws also sold`),
    pulley(80, [54.4, 8, 16, 8], `${HIGH}; ${FLANGE}; M4 set screws also sold`),
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
