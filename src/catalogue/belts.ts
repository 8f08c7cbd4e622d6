import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A toothed belt, by profile. Tension and mass are for each mm of width. */
export type Belt = {
  readonly pitch: number;
  readonly pitchLineDistance: number;
  readonly thickness: number;
  readonly toothHeight: number;
  readonly minTeeth: number;
  readonly minBackIdler: number;
  readonly workTension: number;
  readonly massPerMetrePerMm: number;
};

type Numbers = [number, number, number, number, number, number, number, number];

function belt(key: string, numbers: Numbers, note: string, differs: Disagreement[] = []): Row<Belt> {
  const [pitch, pitchLineDistance, thickness, toothHeight, minTeeth, minBackIdler, workTension, mass] = numbers;
  const sizes = { pitch, pitchLineDistance, thickness, toothHeight };
  const values = { ...sizes, minTeeth, minBackIdler, workTension, massPerMetrePerMm: mass };
  const row: Row<Belt> = { key, values, source: "belt-makers", standing: "typical", from: "memory", note };
  return differs.length === 0 ? row : { ...row, differs };
}

const ASK = "back idler and mass are remembered, ask the maker";

export const BELTS: Table<Belt> = {
  name: "belts",
  item: "belt",
  title: "Toothed belts by profile",
  fields: {
    pitch: { symbol: "P", unit: "mm", meaning: "pitch" },
    pitchLineDistance: { symbol: "u", unit: "mm", meaning: "from the pulley's outside to the pitch line" },
    thickness: { symbol: "h_b", unit: "mm", meaning: "thickness over the teeth" },
    toothHeight: { symbol: "h_t", unit: "mm", meaning: "tooth height" },
    minTeeth: { symbol: "z_min", unit: "", meaning: "fewest teeth of a pulley" },
    minBackIdler: { symbol: "D_b", unit: "mm", meaning: "smallest idler on the back of the belt" },
    workTension: { symbol: "T_w", unit: "N/mm", meaning: "allowable working tension for each mm of width" },
    massPerMetrePerMm: { symbol: "mu", unit: "kg/m", meaning: "mass per metre for each mm of width" },
  },
  rows: [
    belt(
      "2 mm round",
      [2, 0.254, 1.38, 0.75, 12, 14, 4.38, 0.00142],
      "sold 1.25 to 1.52 thick: leave room for 1.52; 16 teeth and up are usual; widths 3, 6, 9, 10, 15",
      differing<Belt>("usual", "a maker's handbook, then a machine maker's inspection page", {
        thickness: [1.52, 1.25],
        toothHeight: [0.76],
      }),
    ),
    belt(
      "3 mm round",
      [3, 0.381, 2.41, 1.22, 16, 22, 11.2, 0.0025],
      "for either of the two profiles, 3 mm G and 3 mm H: the careful value of each; widths 6, 9, 15",
    ),
    belt("3 mm G", [3, 0.381, 2.41, 1.14, 16, 22, 20, 0.0025], `widths 6, 9, 15; ${ASK}`),
    belt("3 mm H", [3, 0.381, 2.41, 1.22, 10, 22, 11.2, 0.0025], `widths 6, 9, 15; ${ASK}`),
    belt("5 mm round", [5, 0.5715, 3.81, 2.08, 14, 40, 17.9, 0.0041], "widths 9, 10, 15, 25, 50", [
      ...differing<Belt>("usual", "another practice list", { minTeeth: [18] }),
      ...differing<Belt>("usual", "the handbook, rounded", { pitchLineDistance: [0.571] }),
      ...differing<Belt>("lower", "another maker", { workTension: [30] }),
    ]),
    belt("MXL", [2.032, 0.254, 1.14, 0.51, 10, 14, 5.6, 0.0012], "widths 3.2, 4.8, 6.4; tooth by ISO 5296", [
      ...differing<Belt>("usual", "a maker's handbook, against the standard", { toothHeight: [0.46] }),
      ...differing<Belt>("usual", "another practice list", { minTeeth: [12] }),
    ]),
    belt("XL", [5.08, 0.254, 2.3, 1.27, 10, 25, 7.2, 0.0024], "widths 6.4, 7.9, 9.5", [
      ...differing<Belt>("usual", "a maker's handbook, rounded", { toothHeight: [1.3] }),
      ...differing<Belt>("usual", "another practice list", { minTeeth: [12] }),
    ]),
    belt(
      "T2.5",
      [2.5, 0.26, 1.3, 0.7, 10, 18, 12.28, 0.0015],
      `widths 4, 6, 10; ${ASK}`,
      differing<Belt>("usual", "belts' own data", { pitchLineDistance: [0.3] }),
    ),
    belt(
      "T5",
      [5, 0.42, 2.2, 1.2, 10, 30, 36.6, 0.0024],
      `widths 6, 10, 16, 25; ${ASK}`,
      differing<Belt>("middle", "pulleys, then belts' own data", { pitchLineDistance: [0.415, 0.435, 0.5] }),
    ),
  ],
  sketch: `
            back of the belt: D_b, the smallest idler there
        +---------------------------------+  ---   T_w: tension it may work at
        |. . . . . . cords . . . . . . . .|        mu: mass of 1 m, 1 mm wide
        +--+     +---+     +---+     +----+  h_b
            \\___/     \\___/     \\___/  h_t   ---
              |<-- P -->|
        u: from the foot of the teeth, the pulley's outside, to the cords
        z_min: teeth of the smallest pulley
`,
};
