import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** Limits of the thread of a lead screw, class 7e. */
export type ScrewLimits = {
  readonly outsideMost: number;
  readonly outsideLeast: number;
  readonly pitchMost: number;
  readonly pitchLeast: number;
  readonly rootMost: number;
  readonly rootLeast: number;
};

type Numbers = [number, number, number, number, number, number];
type Origin = Pick<Row, "source" | "standing" | "from" | "note">;

const TABLE: Origin = { source: "iso-2903", standing: "standard", from: "seen" };
const MAKERS: Origin = { ...TABLE, note: "two screw makers' tables of class 7e" };

/** A size that no table has, from the tolerances of the standard. */
const byTable = (note: string): Origin => ({ ...TABLE, from: "memory", note });

function limits(key: string, numbers: Numbers, origin: Origin = TABLE): Row<ScrewLimits> {
  const [outsideMost, outsideLeast, pitchMost, pitchLeast, rootMost, rootLeast] = numbers;
  return { key, values: { outsideMost, outsideLeast, pitchMost, pitchLeast, rootMost, rootLeast }, ...origin };
}

export const SCREW_LIMITS: Table<ScrewLimits> = {
  name: "screw-limits",
  item: "lead screw",
  title: "Limits of trapezoidal screws, class 7e",
  fields: {
    outsideMost: { symbol: "d_max", unit: "mm", meaning: "outside diameter, largest" },
    outsideLeast: { symbol: "d_min", unit: "mm", meaning: "outside diameter, smallest" },
    pitchMost: { symbol: "d2_max", unit: "mm", meaning: "pitch diameter, largest" },
    pitchLeast: { symbol: "d2_min", unit: "mm", meaning: "pitch diameter, smallest" },
    rootMost: { symbol: "d3_max", unit: "mm", meaning: "root diameter, largest" },
    rootLeast: { symbol: "d3_min", unit: "mm", meaning: "root diameter, smallest" },
  },
  rows: [
    limits("Tr8x1.5", [8, 7.85, 7.183, 7.013, 6.2, 5.921]),
    limits(
      "Tr8x2",
      [8, 7.82, 6.929, 6.739, 5.5, 5.191],
      byTable("by the tolerances of Tr10x2, which has the same pitch and range"),
    ),
    limits("Tr10x2", [10, 9.82, 8.929, 8.739, 7.5, 7.191]),
    limits("Tr10x3", [10, 9.764, 8.415, 8.203, 6.5, 6.15], MAKERS),
    limits("Tr12x2", [12, 11.82, 10.929, 10.729, 9.5, 9.179]),
    limits("Tr12x3", [12, 11.764, 10.415, 10.191, 8.5, 8.135]),
    limits("Tr14x3", [14, 13.764, 12.415, 12.191, 10.5, 10.135]),
    limits("Tr14x4", [14, 13.7, 11.905, 11.64, 9.5, 9.074], MAKERS),
    limits("Tr16x4", [16, 15.7, 13.905, 13.64, 11.5, 11.074]),
    limits("Tr18x4", [18, 17.7, 15.905, 15.64, 13.5, 13.074], MAKERS),
    limits("Tr20x4", [20, 19.7, 17.905, 17.64, 15.5, 15.074], MAKERS),
    {
      ...limits(
        "Tr8x8(P2)",
        [8, 7.82, 6.929, 6.663, 5.5, 5.096],
        byTable("Tr8x2 with 1.4 times the tolerance of d2, for four starts"),
      ),
      differs: differing<ScrewLimits>("standard", "a maker, who keeps the limits of one start for two", {
        pitchLeast: [6.739],
      }),
    },
  ],
  sketch: `
            |<-- d_min to d_max --->|
            |  |< d2_min, d2_max>|  |
            |  |  |d3_min|       |  |
             \\_|  |d3_max|       |_/
              \\   |      |       /
             __\\_ |      |  ____/__
`,
};
