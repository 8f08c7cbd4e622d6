import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** An aluminium bar with slots, as the bracket that grips it needs it. */
export type Bar = {
  readonly width: number;
  readonly height: number;
  readonly module: number;
  readonly slotOpening: number;
  readonly slotMouth: number;
  readonly slotDepth: number;
  readonly lip: number;
  readonly threadStart: number;
  readonly nutLength: number;
  readonly mountBolt: string;
  readonly inertiaStrong: number;
  readonly inertiaWeak: number;
  readonly massPerMetre: number;
};

/** What all bars of one slot share. */
type Slot = Omit<Bar, "width" | "height" | "inertiaStrong" | "inertiaWeak" | "massPerMetre">;

/** Slot nuts of one slot's width: the long end of what is sold, from memory. */
function nutLength(opening: number): number {
  return opening < 6 ? 12 : opening < 8 ? 15 : 22;
}

function slot(module: number, opening: number, depth: number, lip: number, start: number, mountBolt: string): Slot {
  const cut = { slotOpening: opening, slotMouth: opening, slotDepth: depth, lip };
  return { module, ...cut, threadStart: start, nutLength: nutLength(opening), mountBolt };
}

const TWENTY = slot(20, 6.2, 6.1, 1.8, 0.5, "M5");
const GROOVED: Slot = { ...TWENTY, slotMouth: 9.2 };
const FORTY = slot(40, 8.2, 12.2, 4, 1, "M8");

/** Width, height, second moments strong and weak in cm4, mass per metre. */
type Section = [number, number, number, number, number];

function bar(key: string, seat: Slot, section: Section, note: string, differs: Disagreement[]): Row<Bar> {
  const [width, height, inertiaStrong, inertiaWeak, massPerMetre] = section;
  const values = { width, height, ...seat, inertiaStrong, inertiaWeak, massPerMetre };
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note, differs };
}

const MAKERS = "other makers";
/** Narrow, shallow and light ends are safe: nothing jams, no bolt bottoms, no bar is thought too stiff. */
const lower = (others: Partial<Record<keyof Bar, number[]>>) => differing<Bar>("lower", MAKERS, others);
const between = (...slotDepth: number[]) => differing<Bar>("middle", MAKERS, { slotDepth });
const usual = (others: Partial<Record<keyof Bar, number[]>>) => differing<Bar>("usual", MAKERS, others);

const SIX = [...between(6, 6.4), ...usual({ slotOpening: [6], lip: [1.5, 2] })];
const LARGE = [...between(12, 12.3), ...usual({ slotOpening: [8] })];
const GROOVE = "throat 6.2, mouth 9.2, flanks 90 deg; second moments vary by 15 %";
const MOUTH = [
  ...usual({ slotDepth: [6] }),
  ...differing<Bar>("maker", "an unreliable page", { slotMouth: [6.4], slotOpening: [5.7] }),
];

export const BARS: Table<Bar> = {
  name: "bars",
  item: "bar",
  title: "Aluminium bars with slots",
  fields: {
    width: { symbol: "W", unit: "mm", meaning: "width of the section" },
    height: { symbol: "H", unit: "mm", meaning: "height of the section" },
    module: { symbol: "U", unit: "mm", meaning: "distance from slot to slot" },
    slotOpening: { symbol: "w_s", unit: "mm", meaning: "slot opening at its narrowest" },
    slotMouth: { symbol: "w_m", unit: "mm", meaning: "slot width at the face; wider than the opening in V bars" },
    slotDepth: {
      symbol: "h_s",
      unit: "mm",
      meaning: "slot depth below the face, at or near the shallow end of what is sold",
    },
    lip: { symbol: "l", unit: "mm", meaning: "thickness of the lip a slot nut pulls on" },
    threadStart: { symbol: "t_s", unit: "mm", meaning: "depth at which the thread of a necked slot nut begins" },
    nutLength: {
      symbol: "l_n",
      unit: "mm",
      meaning: "length of a slot nut along the bar, the long end of what is sold",
    },
    mountBolt: { symbol: "M_b", unit: "", meaning: "thread that usually mounts a bracket" },
    inertiaStrong: { symbol: "I_s", unit: "cm4", meaning: "second moment for bending across the height" },
    inertiaWeak: { symbol: "I_w", unit: "cm4", meaning: "second moment for bending across the width" },
    massPerMetre: { symbol: "q", unit: "kg/m", meaning: "mass per metre" },
  },
  rows: [
    bar("20x20 slot 6", TWENTY, [20, 20, 0.7, 0.7, 0.47], "I 0.65 to 0.80 cm4", [
      ...SIX,
      ...usual({ massPerMetre: [0.42, 0.55] }),
      ...differing<Bar>("maker", "a news page", { massPerMetre: [0.65] }),
    ]),
    bar("20x40 slot 6", TWENTY, [20, 40, 4.8, 1.35, 0.87], "sizes as the 20x20", SIX),
    bar("V 20x20", GROOVED, [20, 20, 0.7, 0.7, 0.47], GROOVE, MOUTH),
    bar("V 20x40", GROOVED, [20, 40, 4.7, 1.3, 0.82], GROOVE, MOUTH),
    bar("30x30 slot 8", slot(30, 8.2, 9, 2, 0.6, "M6"), [30, 30, 2.8, 2.8, 0.9], "I 2.7 to 3.5 cm4", [
      ...lower({ slotDepth: [9.3] }),
      ...usual({ slotOpening: [8], lip: [1.8, 2.2], massPerMetre: [0.8, 1] }),
    ]),
    bar(
      "40x40 slot 8",
      FORTY,
      [40, 40, 9, 9, 1.6],
      "light bars 7 to 9 cm4 with lips of 2.0 to 2.5, heavy ones 13.5 to 14 with 4.0 to 4.5: measure the lip",
      [...LARGE, ...usual({ inertiaStrong: [7, 13.9], lip: [2, 4.5], massPerMetre: [1.4, 2.6] })],
    ),
    bar("40x80 slot 8", FORTY, [40, 80, 65, 17, 3], "sizes as the 40x40", LARGE),
    bar("1 in", slot(25.4, 6.5, 6.2, 2.2, 0.6, "M5"), [25.4, 25.4, 1.84, 1.84, 0.76], "1/4-20 nuts are usual", [
      ...lower({ slotDepth: [6.5] }),
    ]),
    bar("1.5 in", slot(38.1, 8.1, 9.7, 3.3, 1, "M8"), [38.1, 38.1, 10.6, 10.6, 1.99], "5/16-18 nuts are usual", [
      ...lower({ slotDepth: [10], lip: [4] }),
      ...differing<Bar>("usual", "a published deflection, worked back", { inertiaStrong: [10.4] }),
    ]),
    bar("20x20 slot 5", slot(20, 5.2, 5.8, 1.8, 0.5, "M4"), [20, 20, 0.6, 0.6, 0.46], "I 0.60 to 0.75 cm4", [
      ...lower({ slotDepth: [6.4] }),
      ...usual({ slotOpening: [5], massPerMetre: [0.42, 0.5] }),
    ]),
    bar("25x25 slot 6", slot(25, 6.2, 6.5, 1.8, 0.5, "M5"), [25, 25, 1.3, 1.3, 0.72], "of low confidence", [
      ...lower({ slotDepth: [7.5], lip: [2.2], inertiaStrong: [1.8] }),
      ...usual({ slotOpening: [6], massPerMetre: [0.65, 0.8] }),
    ]),
    bar("30x30 slot 6", slot(30, 6.2, 8.5, 2, 0.6, "M5"), [30, 30, 2.6, 2.6, 0.9], "I 2.6 to 3.2 cm4", [
      ...lower({ slotDepth: [9.5], lip: [2.2], inertiaStrong: [3.2] }),
      ...usual({ slotOpening: [6], massPerMetre: [0.8, 1] }),
    ]),
    bar("40x40 slot 10", slot(40, 10.2, 12, 4, 1, "M8"), [40, 40, 9, 9, 1.7], "I 9 to 11 cm4", [
      ...lower({ slotDepth: [12.6], lip: [4.5], inertiaStrong: [11] }),
      ...usual({ slotOpening: [10], massPerMetre: [1.5, 1.9] }),
    ]),
    bar("45x45 slot 10", slot(45, 10.2, 14, 4, 1, "M8"), [45, 45, 11, 11, 1.6], "heavy bars 14 to 15 cm4", [
      ...lower({ slotDepth: [14.6], lip: [4.5], inertiaStrong: [12, 14, 15] }),
      ...usual({ slotOpening: [10], massPerMetre: [1.5, 2.3] }),
    ]),
    bar("V 20x60", GROOVED, [20, 60, 13.5, 1.8, 1.15], GROOVE, MOUTH),
    bar("V 20x80", GROOVED, [20, 80, 30, 2.4, 1.5], GROOVE, MOUTH),
  ],
  sketch: `
         |<----------- W ------------>|
               |<- w_m ->|                  w_m is wider than w_s
        +------+         +------+     ---   only where the flanks are V
        |   l  |  w_s    |      |     t_s   down to the nut's thread
        +---+  +--     --+  +---+     h_s   down to the floor
            |               |
            +---------------+               H: the other way across
     U: from slot to slot      M_b: bolt, its slot nut l_n long
     q: mass per metre
     I_s, I_w: stiffness over the height, over the width
`,
};
