import type { Row, Table } from "../core/table.ts";

/** A button head screw with a hexagon socket. */
export type ButtonScrew = {
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly key: number;
};

function buttonScrew(thread: string, headDiameter: number, headHeight: number, key: number): Row<ButtonScrew> {
  const values = { headDiameter, headHeight, key };
  return { key: thread, values, source: "iso-7380-1", standing: "standard", from: "seen" };
}

export const BUTTON_SCREWS: Table<ButtonScrew> = {
  name: "button-screws",
  item: "button screw",
  title: "Button head screws",
  fields: {
    headDiameter: { symbol: "dk", unit: "mm", meaning: "head diameter, largest" },
    headHeight: { symbol: "k", unit: "mm", meaning: "head height" },
    key: { symbol: "s", unit: "mm", meaning: "hexagon key" },
  },
  rows: [
    buttonScrew("M3", 5.7, 1.65, 2),
    buttonScrew("M4", 7.6, 2.2, 2.5),
    buttonScrew("M5", 9.5, 2.75, 3),
    buttonScrew("M6", 10.5, 3.3, 4),
    buttonScrew("M8", 14, 4.4, 5),
    buttonScrew("M10", 17.5, 5.5, 6),
    buttonScrew("M12", 21, 6.6, 8),
  ],
  sketch: `
        ---    _--+
             /    |------------------+
        dk  s     |//////////////////|
             \\    |------------------+
        ---    ~--+
            |< k >|
`,
};
