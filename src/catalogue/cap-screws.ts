import type { Row, Table } from "../core/table.ts";

/** A socket head cap screw. */
export type CapScrew = {
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly key: number;
  readonly threadLength: number;
};

function capScrew(thread: string, headDiameter: number, headHeight: number, key: number, b: number): Row<CapScrew> {
  const values = { headDiameter, headHeight, key, threadLength: b };
  return { key: thread, values, source: "iso-4762", standing: "standard", from: "seen" };
}

export const CAP_SCREWS: Table<CapScrew> = {
  name: "cap-screws",
  item: "cap screw",
  title: "Socket head cap screws",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, largest, plain head" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
    threadLength: { symbol: "b", unit: "mm", meaning: "thread length of a part-threaded screw" },
  },
  rows: [
    capScrew("M2.5", 4.5, 2.5, 2, 17),
    capScrew("M3", 5.5, 3, 2.5, 18),
    capScrew("M4", 7, 4, 3, 20),
    capScrew("M5", 8.5, 5, 4, 22),
    capScrew("M6", 10, 6, 5, 24),
    capScrew("M8", 13, 8, 6, 28),
    capScrew("M10", 16, 10, 8, 32),
    capScrew("M12", 18, 12, 10, 36),
  ],
  sketch: `
        ---  +------+
             |      |------------------------+
        dk   s      |                ////////|
             |      |------------------------+
        ---  +------+                |<- b ->|
             |<- k >|
`,
};
