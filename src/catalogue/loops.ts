import type { Row, Table } from "../core/table.ts";

/** A closed belt as shops keep it. */
export type Loop = {
  readonly length: number;
  readonly teeth: number;
  readonly pitch: number;
};

/** Lengths in mm of closed loops with 2 mm pitch that most shops keep. */
const COMMON = [
  ...[110, 112, 120, 122, 130, 140, 150, 158, 160, 162, 164, 172, 180, 188, 192, 198, 200, 202, 208, 220, 224, 232],
  ...[240, 250, 252, 260, 264, 280, 284, 288, 300, 302, 320, 330, 336, 340, 350, 360, 370, 380, 390, 400, 406, 410],
  ...[420, 430, 440, 450, 474, 480, 488, 500, 528, 544, 552, 560, 580, 600, 610, 640, 650, 660, 696, 700, 720, 740],
  ...[752, 760, 768, 784, 800, 810, 848, 852, 900, 960, 976, 1000, 1140, 1164, 1210, 1220, 1264, 1350, 1524, 1544],
];

/** Lengths that stand in one list of shops only. */
const RARER = [...[256, 294, 310, 376, 436, 490, 550, 588, 672, 680, 1030, 1100, 1250, 1310, 1400, 1600, 1980]];

function loop(length: number): Row<Loop> {
  const often = RARER.includes(length) ? "in one of two lists: not every shop has it" : "often in stock";
  const note = `${often}; the number on the belt is its length in mm, or its teeth`;
  const values = { length, teeth: length / 2, pitch: 2 };
  return { key: String(length), values, source: "common-practice", standing: "typical", from: "memory", note };
}

export const LOOPS: Table<Loop> = {
  name: "loops",
  item: "loop",
  title: "Closed belts in stock, 2 mm pitch",
  fields: {
    length: { symbol: "L", unit: "mm", meaning: "length along the pitch line" },
    teeth: { symbol: "N", unit: "", meaning: "number of teeth" },
    pitch: { symbol: "P", unit: "mm", meaning: "pitch" },
  },
  rows: [...COMMON, ...RARER].sort((one, other) => one - other).map(loop),
  sketch: `
           ________________________
         /  ______________________  \\
        (  (                      )  )    L = N P, along the cords
         \\  ~~~~~~~~~~~~~~~~~~~~~~  /
           ~~~~~~~~~~~~~~~~~~~~~~~~
`,
};
