import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A button head screw with a hexagon socket. */
export type ButtonScrew = {
  readonly headDiameter: number;
  readonly headLeast: number;
  readonly headHeight: number;
  readonly headHeightLeast: number;
  readonly key: number;
  readonly socketDepth: number;
};

type Numbers = [number, number, number, number, number, number];

function buttonScrew(thread: string, numbers: Numbers, differs?: Disagreement[]): Row<ButtonScrew> {
  const [headDiameter, headLeast, headHeight, headHeightLeast, key, socketDepth] = numbers;
  const values = { headDiameter, headLeast, headHeight, headHeightLeast, key, socketDepth };
  const row: Row<ButtonScrew> = { key: thread, values, source: "iso-7380-1", standing: "standard", from: "seen" };
  return differs === undefined ? row : { ...row, differs };
}

/** The inch standard's metric twin prints other least head heights. */
const twin = (least: number) =>
  differing<ButtonScrew>("standard", "the inch standard's metric twin", { headHeightLeast: [least] });

export const BUTTON_SCREWS: Table<ButtonScrew> = {
  name: "button-screws",
  item: "button screw",
  title: "Button head screws",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, largest" },
    headLeast: { symbol: "dk_min", unit: "mm", meaning: "head diameter, smallest" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height" },
    headHeightLeast: { symbol: "k_min", unit: "mm", meaning: "head height, smallest" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
    socketDepth: { symbol: "t", unit: "mm", meaning: "depth of the socket, smallest" },
  },
  rows: [
    buttonScrew("M3", [5.7, 5.4, 1.65, 1.4, 2, 1.04], twin(1.43)),
    buttonScrew("M4", [7.6, 7.24, 2.2, 1.95, 2.5, 1.3]),
    buttonScrew("M5", [9.5, 9.14, 2.75, 2.5, 3, 1.56]),
    buttonScrew("M6", [10.5, 10.07, 3.3, 3, 4, 2.08]),
    buttonScrew("M8", [14, 13.57, 4.4, 4.1, 5, 2.6], twin(4.05)),
    buttonScrew("M10", [17.5, 17.07, 5.5, 5.2, 6, 3.12]),
    buttonScrew("M12", [21, 20.48, 6.6, 6.24, 8, 4.16]),
  ],
  sketch: `
        ---    _--+
             /--  |------------------+
        dk  s   | |//////////////////|   dk_min, k_min: the least
             \\--  |------------------+
        ---    ~--+
            |t  |
            |< k >|
`,
};
