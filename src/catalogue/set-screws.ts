import type { Row, Table } from "../core/table.ts";

/** A set screw with a cup point, tightened to its torque, on a smooth shaft. */
export type SetScrew = {
  readonly key: number;
  readonly socketDepth: number;
  readonly torque: number;
  readonly holdingForce: number;
};

/** What is known of the hold: torque, force, and the inch size they belong to. */
type Hold = [number, number, string];

function setScrew(thread: string, key: number, socketDepth: number, hold?: Hold): Row<SetScrew> {
  if (hold === undefined) {
    const values = { key, socketDepth, torque: 0, holdingForce: 0 };
    return { key: thread, values, source: "iso-4026", standing: "standard", from: "seen" };
  }
  const [torque, holdingForce, inch] = hold;
  const values = { key, socketDepth, torque, holdingForce };
  const note = `torque and force are those of ${inch}; on the crests of a thread it holds 0.3 of that`;
  return { key: thread, values, source: "shigley: Table 7-4", standing: "published", from: "memory", note };
}

export const SET_SCREWS: Table<SetScrew> = {
  name: "set-screws",
  item: "set screw",
  title: "Set screws with a cup point, and what one holds along the shaft",
  fields: {
    key: { symbol: "s", unit: "mm", meaning: "hexagon key", source: "iso-4026" },
    socketDepth: { symbol: "t", unit: "mm", meaning: "depth of the socket, smallest", source: "iso-4026" },
    torque: { symbol: "T_s", unit: "N·m", meaning: "tightening torque; 0 when there is no data" },
    holdingForce: {
      symbol: "F_h",
      unit: "N",
      meaning: "force along the shaft at which one screw slips; 0 when there is no data",
    },
  },
  rows: [
    setScrew("M2", 0.9, 0.8),
    setScrew("M2.5", 1.3, 1.2),
    setScrew("M3", 1.5, 1.2, [1.13, 890, "the inch size #5 (3.2 mm): 10 lbf in, 200 lbf"]),
    setScrew("M4", 2, 1.5, [2.26, 1713, "the inch size #8 (4.2 mm): 20 lbf in, 385 lbf"]),
    setScrew("M5", 2.5, 2, [4.07, 2402, "the inch size #10 (4.8 mm): 36 lbf in, 540 lbf"]),
    setScrew("M6", 3, 2),
    setScrew("M8", 4, 3),
  ],
  sketch: `
                   T_s, key s
                  +--| t |--+
        ##########|  screw  |##########
        ##  hub  #|         |#########
        ##########+---\\_/---+##########
        ------------------------------
                    shaft               --> F_h
        ------------------------------
`,
};
