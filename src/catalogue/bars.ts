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

function bar(key: string, seat: Slot, section: Section, note: string): Row<Bar> {
  const [width, height, inertiaStrong, inertiaWeak, massPerMetre] = section;
  const values = { width, height, ...seat, inertiaStrong, inertiaWeak, massPerMetre };
  return { key, values, source: "common-practice", standing: "typical", from: "memory", note };
}

const SLOT_6 = "slot sold 6.0 to 6.2 wide and 6.0 to 6.4 deep";
const GROOVE = "slot 6.0 to 6.1 deep; throat 6.2, mouth 9.2, flanks 90 deg; second moments vary by 15 %";
const SLOT_8 = "slot 12 to 12.3 deep; light bars have lips of 2.0 to 2.5, heavy ones 4.0 to 4.5";

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
    slotDepth: { symbol: "h_s", unit: "mm", meaning: "slot depth below the face, the shallow end of what is sold" },
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
    bar("20x20 slot 6", TWENTY, [20, 20, 0.7, 0.7, 0.47], `${SLOT_6}; lip 1.5 to 2.0, 0.42 to 0.55 kg/m`),
    bar("20x40 slot 6", TWENTY, [20, 40, 4.8, 1.35, 0.87], SLOT_6),
    bar("V 20x20", GROOVED, [20, 20, 0.7, 0.7, 0.47], GROOVE),
    bar("V 20x40", GROOVED, [20, 40, 4.7, 1.3, 0.82], GROOVE),
    bar(
      "30x30 slot 8",
      slot(30, 8.2, 9, 2, 0.6, "M6"),
      [30, 30, 2.8, 2.8, 0.9],
      "lip 1.8 to 2.2, slot 9.0 to 9.3 deep",
    ),
    bar("40x40 slot 8", FORTY, [40, 40, 9, 9, 1.6], `${SLOT_8}; 7 to 9 cm4 light, 13.5 to 14 heavy: the lower is used`),
    bar("40x80 slot 8", FORTY, [40, 80, 65, 17, 3], SLOT_8),
    bar(
      "1 in",
      slot(25.4, 6.5, 6.2, 2.2, 0.6, "M5"),
      [25.4, 25.4, 1.84, 1.84, 0.76],
      "slot depth also quoted 6.5; 6.2 is used, so that a bolt cannot bottom; 1/4-20 nuts are usual",
    ),
    bar(
      "1.5 in",
      slot(38.1, 8.1, 9.7, 3.3, 1, "M8"),
      [38.1, 38.1, 10.6, 10.6, 1.99],
      "slot depth quoted 9.7 to 10, lip 3.3 to 4.0; second moment 10.4 by a published deflection; 5/16-18 nuts are usual",
    ),
    bar(
      "20x20 slot 5",
      slot(20, 5.2, 5.8, 1.8, 0.5, "M4"),
      [20, 20, 0.6, 0.6, 0.46],
      "slot 5.0 to 5.2, 5.8 to 6.4 deep",
    ),
    bar(
      "25x25 slot 6",
      slot(25, 6.2, 6.5, 1.8, 0.5, "M5"),
      [25, 25, 1.3, 1.3, 0.72],
      "of low confidence; 6.5 to 7.5 deep",
    ),
    bar("30x30 slot 6", slot(30, 6.2, 8.5, 2, 0.6, "M5"), [30, 30, 2.6, 2.6, 0.9], "8.5 to 9.5 deep, lip 2.0 to 2.2"),
    bar("40x40 slot 10", slot(40, 10.2, 12, 4, 1, "M8"), [40, 40, 9, 9, 1.7], "12 to 12.6 deep, 9 to 11 cm4"),
    bar(
      "45x45 slot 10",
      slot(45, 10.2, 14, 4, 1, "M8"),
      [45, 45, 11, 11, 1.6],
      "14 to 14.6 deep; heavy bars 14 to 15 cm4",
    ),
    bar("V 20x60", GROOVED, [20, 60, 13.5, 1.8, 1.15], GROOVE),
    bar("V 20x80", GROOVED, [20, 80, 30, 2.4, 1.5], GROOVE),
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
