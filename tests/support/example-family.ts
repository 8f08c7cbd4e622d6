import * as z from "zod";
import { THREADS } from "../../src/catalogue/threads.ts";
import type { Dimensions } from "../../src/core/dimension.ts";
import { choice, length, plainNumber } from "../../src/core/parameter.ts";
import { row } from "../../src/core/table.ts";
import { opening, rectangle } from "../../src/geometry/profile.ts";
import { carve, cylinder, prism } from "../../src/geometry/solid.ts";
import { below, type Check } from "../../src/parts/check.ts";
import { defineFamily } from "../../src/parts/define-family.ts";
import type { Case } from "../../src/parts/family.ts";
import { parameterGivens, printerGivens } from "../../src/parts/givens.ts";
import type { Piece } from "../../src/parts/piece.ts";
import { uprightHole } from "../../src/printing/compensation.ts";
import { boltTorque, type Printer } from "../../src/printing/printer.ts";

// 1. What is given. Every field has a symbol, a meaning, a range, a default; units and messages come from that.
const schema = z.strictObject({
  bolt: choice("bolt", "the bolt through the riser", { M4: "M4", M5: "M5", M6: "M6" }).default("M5"),
  height: length({ symbol: "h", meaning: "how far it lifts", min: 3, max: 60 }).default(12),
  side: length({ symbol: "s", meaning: "width and depth", min: 8, max: 60 }).default(16),
  count: plainNumber({ symbol: "n", meaning: "how many to print", min: 1, max: 24 }).default(4),
});
type Parameters = z.output<typeof schema>;

// 2. What follows: plain arithmetic that never throws on what the schema accepts.
interface Derived {
  readonly hole: number;
  readonly holeModelled: number;
  readonly wall: number;
}

function derive({ bolt, side }: Parameters, printer: Printer): Derived {
  const hole = row(THREADS, bolt).values.mediumHole;
  return { hole, holeModelled: uprightHole(hole, printer), wall: (side - hole) / 2 };
}

// 3. What each number is called. The compiler asks for one entry per number; the kit evaluates the formulas.
const dimensions: Dimensions<Parameters, Derived> = {
  hole: { symbol: "d_h", unit: "mm", meaning: "hole wanted", formula: "d_medium", source: "iso-273" },
  holeModelled: {
    symbol: "d_m",
    unit: "mm",
    meaning: "hole as modelled",
    formula: "d_h + holeShrinkV * (1 - shrink / 100)",
    source: "geometry",
  },
  wall: { symbol: "w", unit: "mm", meaning: "plastic beside the hole", formula: "(s - d_h) / 2", source: "geometry" },
};

// 4. What must hold: named for the defect, with the smallest change of the defaults that trips it.
const checks: readonly Check<Parameters, Derived>[] = [
  {
    name: "riser-wall-too-thin",
    path: ["side"],
    why: "the bolt's head presses the thin wall outwards and splits it",
    trips: { error: { side: 9 } },
    test: ({ given, derived }) =>
      below({
        value: derived.wall,
        unit: "mm",
        error: 2.4,
        says: (limit) =>
          `${derived.wall.toFixed(2)} mm of plastic lie beside the ${given.bolt} hole, under ${limit} mm`,
        set: `side: ${(derived.hole + 4.8).toFixed(1)} mm or more`,
      }),
  },
];

// 5. What it looks like: cut and keep-out come from the same numbers, and the mesh is checked against both.
function pieces({ given, derived }: Case<Parameters, Derived>): Piece[] {
  const { bolt, height, side, count } = given;
  const half = side / 2;
  const thread = row(THREADS, bolt).values.diameter;
  const area = side ** 2 - (Math.PI / 4) * derived.holeModelled ** 2;
  return [
    {
      name: "",
      title: `riser, ${height} mm`,
      solid: carve(prism(rectangle(-half, -half, half, half), 0, height, 0.4), [
        prism(opening(derived.holeModelled), -1, height + 1),
      ]),
      count,
      keepOuts: [{ name: `${bolt} bolt`, body: cylinder(thread / 2, -5, height + 5) }],
      contacts: [{ name: "upper face", area, point: [0, 0, height], normal: [0, 0, 1], reach: side }],
      measures: [
        { what: "height", expected: height, tolerance: 0.1 },
        { what: "width", expected: side, tolerance: 0.15 },
        { what: "hole", expected: derived.hole, tolerance: 0.15 },
      ],
      wall: { error: 1.2, warning: 2 },
    },
  ];
}

// 6. The table of contents.
export const riser = defineFamily({
  name: "riser",
  title: "Riser",
  purpose: "Lifts a part off its bar by a set height, with a bolt through it.",
  orientation: "on either face: the bolt presses the layers together",
  sketch: `
    |<- s ->|
    +-+   +-+  ---
    | |d_h| |   h
    +-+   +-+  ---
`,
  schema,
  derive,
  dimensions,
  givens: ({ given, printer }) => [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    {
      symbol: "d_medium",
      value: row(THREADS, given.bolt).values.mediumHole,
      unit: "mm",
      meaning: "medium clearance hole",
      source: "iso-273",
    },
  ],
  checks,
  pieces,
  hardware: ({ given }) => [{ item: `${given.bolt} washer`, count: given.count }],
  cautions: () => ["not-lifting-gear", "own-responsibility"],
  limits: ({ given, printer }) => [`${given.bolt} on plastic: at most ${boltTorque(printer, given.bolt)} N·m`],
  material: () => "PETG",
});
