import type { Row, Table } from "../core/table.ts";

/** The small end of hexagon nuts: what a pocket must still hold, and a spanner still turn. */
export type NutLimits = {
  readonly flatsLeast: number;
  readonly cornersLeast: number;
  readonly bearingFace: number;
  readonly heightLeast: number;
  readonly thinLeast: number;
};

type Numbers = [number, number, number, number, number];

function limits(key: string, numbers: Numbers): Row<NutLimits> {
  const [flatsLeast, cornersLeast, bearingFace, heightLeast, thinLeast] = numbers;
  const values = { flatsLeast, cornersLeast, bearingFace, heightLeast, thinLeast };
  return { key, values, source: "iso-4032", standing: "standard", from: "seen" };
}

export const NUT_LIMITS: Table<NutLimits> = {
  name: "nut-limits",
  item: "nut",
  title: "Smallest sizes of hexagon nuts",
  fields: {
    flatsLeast: { symbol: "s_min", unit: "mm", meaning: "width across flats, smallest" },
    cornersLeast: { symbol: "e_min", unit: "mm", meaning: "width across corners, smallest" },
    bearingFace: { symbol: "dw", unit: "mm", meaning: "diameter of the face that presses, smallest" },
    heightLeast: { symbol: "m_min", unit: "mm", meaning: "height, smallest" },
    thinLeast: { symbol: "m_n", unit: "mm", meaning: "height of a thin nut, smallest", source: "iso-4035" },
  },
  rows: [
    limits("M2", [3.82, 4.32, 3.1, 1.35, 0.95]),
    limits("M2.5", [4.82, 5.45, 4.1, 1.75, 1.35]),
    limits("M3", [5.32, 6.01, 4.6, 2.15, 1.55]),
    limits("M4", [6.78, 7.66, 5.9, 2.9, 1.95]),
    limits("M5", [7.78, 8.79, 6.9, 4.4, 2.45]),
    limits("M6", [9.78, 11.05, 8.9, 4.9, 2.9]),
    limits("M8", [12.73, 14.38, 11.6, 6.44, 3.7]),
    limits("M10", [15.73, 17.77, 14.6, 8.04, 4.7]),
    limits("M12", [17.73, 20.03, 16.6, 10.37, 5.7]),
  ],
  sketch: `
          ______      ---       +----+ ---
         /  __  \\               |    |
        /  /  \\  \\     s_min    |    | dw
        \\  \\__/  /              |    |
         \\______/     ---       +----+ ---
        |<-e_min->|             m_min      m_n: of a thin nut
`,
};
