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

function belt(key: string, numbers: Numbers, note: string): Row<Belt> {
  const [pitch, pitchLineDistance, thickness, toothHeight, minTeeth, minBackIdler, workTension, mass] = numbers;
  const sizes = { pitch, pitchLineDistance, thickness, toothHeight };
  const values = { ...sizes, minTeeth, minBackIdler, workTension, massPerMetrePerMm: mass };
  return { key, values, source: "belt-makers", standing: "typical", from: "memory", note };
}

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
      "handbook 1.52 thick with 0.76 teeth, sold 1.25 to 1.52: leave room for 1.52; 16 teeth and up are usual",
    ),
    belt(
      "3 mm round",
      [3, 0.381, 2.41, 1.22, 16, 22, 11.2, 0.0025],
      "two profiles: teeth 1.14 (16 teeth at least, 20 N/mm) and 1.22 (10, 11.2 N/mm); the careful value of each is used",
    ),
    belt(
      "5 mm round",
      [5, 0.5715, 3.81, 2.08, 14, 40, 17.9, 0.0041],
      "18 teeth at least by another practice list; 17.9 to 30 N/mm, the lower is used",
    ),
    belt(
      "MXL",
      [2.032, 0.254, 1.14, 0.51, 10, 14, 5.6, 0.0012],
      "tooth 0.46 in a handbook figure, 0.51 by ISO 5296: standard before maker; 12 teeth by another list",
    ),
    belt(
      "XL",
      [5.08, 0.254, 2.3, 1.27, 10, 25, 7.2, 0.0024],
      "a handbook figure rounds the tooth to 1.3; 12 by another list",
    ),
    belt(
      "T2.5",
      [2.5, 0.26, 1.3, 0.7, 10, 18, 12.28, 0.0015],
      "pitch line also quoted 0.3; back idler and mass are remembered, ask the maker",
    ),
    belt(
      "T5",
      [5, 0.42, 2.2, 1.2, 10, 30, 36.6, 0.0024],
      "pulleys give 0.415 to 0.435 for u, belts 0.5; back idler and mass are remembered, ask the maker",
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
