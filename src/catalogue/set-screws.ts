import type { Row, Table } from "../core/table.ts";

/** A set screw with a cup point, tightened to its torque, on a smooth shaft. Other sizes: no data. */
export type SetScrew = {
  readonly key: number;
  readonly torque: number;
  readonly holdingForce: number;
};

function setScrew(thread: string, key: number, torque: number, holdingForce: number, inch: string): Row<SetScrew> {
  const values = { key, torque, holdingForce };
  const note = `torque and force are those of ${inch}; on the crests of a thread it holds 0.3 of that`;
  return { key: thread, values, source: "shigley: Table 7-4", standing: "published", from: "memory", note };
}

export const SET_SCREWS: Table<SetScrew> = {
  name: "set-screws",
  item: "set screw",
  title: "Set screws with a cup point, and what one holds along the shaft",
  fields: {
    key: { symbol: "s", unit: "mm", meaning: "hexagon key, ISO 4026" },
    torque: { symbol: "T_s", unit: "N·m", meaning: "tightening torque" },
    holdingForce: { symbol: "F_h", unit: "N", meaning: "force along the shaft at which one screw slips" },
  },
  rows: [
    setScrew("M3", 1.5, 1.13, 890, "the inch size #5 (3.2 mm): 10 lbf in, 200 lbf"),
    setScrew("M4", 2, 2.26, 1713, "the inch size #8 (4.2 mm): 20 lbf in, 385 lbf"),
    setScrew("M5", 2.5, 4.07, 2402, "the inch size #10 (4.8 mm): 36 lbf in, 540 lbf"),
  ],
  sketch: `
                   T_s, key s
                  +---------+
        ##########|  screw  |##########
        ##  hub  #|         |#########
        ##########+---\\_/---+##########
        ------------------------------
                    shaft               --> F_h
        ------------------------------
`,
};
