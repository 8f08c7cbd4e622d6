import type { Row, Table } from "../core/table.ts";

/** A socket head cap screw. */
export type CapScrew = {
  readonly headDiameter: number;
  readonly knurledDiameter: number;
  readonly headLeast: number;
  readonly headHeight: number;
  readonly headHeightLeast: number;
  readonly key: number;
  readonly socketDepth: number;
  readonly socketCorners: number;
  readonly threadLength: number;
};

/** Head diameter plain and knurled, and least; head height and least; key, socket depth and corners; b. */
type Numbers = [number, number, number, number, number, number, number, number, number];

function capScrew(thread: string, numbers: Numbers): Row<CapScrew> {
  const [headDiameter, knurledDiameter, headLeast, headHeight, headHeightLeast, key, depth, corners, b] = numbers;
  const head = { headDiameter, knurledDiameter, headLeast, headHeight, headHeightLeast };
  const values = { ...head, key, socketDepth: depth, socketCorners: corners, threadLength: b };
  return { key: thread, values, source: "iso-4762", standing: "standard", from: "seen" };
}

export const CAP_SCREWS: Table<CapScrew> = {
  name: "cap-screws",
  item: "cap screw",
  title: "Socket head cap screws",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, largest, plain head" },
    knurledDiameter: { symbol: "dk_k", unit: "mm", meaning: "head diameter, largest, knurled head" },
    headLeast: { symbol: "dk_min", unit: "mm", meaning: "head diameter, smallest" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height" },
    headHeightLeast: { symbol: "k_min", unit: "mm", meaning: "head height, smallest" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
    socketDepth: { symbol: "t", unit: "mm", meaning: "depth of the socket, smallest" },
    socketCorners: { symbol: "e", unit: "mm", meaning: "socket across the corners, smallest" },
    threadLength: { symbol: "b", unit: "mm", meaning: "thread length of a part-threaded screw" },
  },
  rows: [
    capScrew("M2", [3.8, 3.98, 3.62, 2, 1.86, 1.5, 1, 1.733, 16]),
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the corners of a socket of 2, not a logarithm
    capScrew("M2.5", [4.5, 4.68, 4.32, 2.5, 2.36, 2, 1.1, 2.303, 17]),
    capScrew("M3", [5.5, 5.68, 5.32, 3, 2.86, 2.5, 1.3, 2.873, 18]),
    capScrew("M4", [7, 7.22, 6.78, 4, 3.82, 3, 2, 3.443, 20]),
    capScrew("M5", [8.5, 8.72, 8.28, 5, 4.82, 4, 2.5, 4.583, 22]),
    capScrew("M6", [10, 10.22, 9.78, 6, 5.7, 5, 3, 5.723, 24]),
    capScrew("M8", [13, 13.27, 12.73, 8, 7.64, 6, 4, 6.863, 28]),
    capScrew("M10", [16, 16.27, 15.73, 10, 9.64, 8, 5, 9.149, 32]),
    capScrew("M12", [18, 18.27, 17.73, 12, 11.57, 10, 6, 11.429, 36]),
  ],
  sketch: `
        ---  +------+
             |--+   |------------------------+
        dk   s  |   |                ////////|    dk_k: with a knurl
             |--+   |------------------------+    dk_min, k_min: the least
        ---  +------+                |<- b ->|    e: the socket's corners
             |t |                                    across
             |<- k >|
`,
};
