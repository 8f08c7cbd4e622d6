import type { DefectName } from "../core/defects.ts";
import type { Level } from "../core/diagnostic.ts";
import { rectangle } from "../geometry/profile.ts";
import { carve, cylinder, prism, type Solid, unite } from "../geometry/solid.ts";
import type { Piece } from "../parts/piece.ts";

/** A body that has a defect, for those that no preset is known to bring about: checks of the families come first. */
export interface BodyExample {
  readonly level: Level;
  /** The body in words. */
  readonly body: string;
  readonly piece: Piece;
  /** What is told of it. */
  readonly built: string;
}

function piece(solid: Solid, changes: Partial<Piece> = {}): Piece {
  const wall = { error: 1.2, warning: 2 };
  return { name: "", title: "example", solid, count: 1, keepOuts: [], contacts: [], measures: [], wall, ...changes };
}

/** A block round the axis, from one height to another, mm. */
const block = (half: number, from: number, to: number) => prism(rectangle(-half, -half, half, half), from, to);

/** Bodies with the defects of a finished mesh. */
export const BODY_EXAMPLES = {
  "wall-too-thin": [
    {
      level: "error",
      body: "a block of 20 x 20 x 10 mm with a slot that leaves 0.6 mm of it standing beside it",
      piece: piece(carve(block(10, 0, 10), [prism(rectangle(6, -11, 9.4, 11), 2, 11)])),
      built:
        "a wall is 0.60 mm thick, 1.3 printed lines, at x 9.7, y -3.3, z 3.3, and at x 9.7, y 5.3, z 2.1; x 9.7, y -9.4, z 9.2; x 9.7, y 2.5, z 7.3; x 9.7, y 8.4, z 7.1",
    },
  ],
  "overhang-needs-support": [
    {
      level: "error",
      body: "a plate of 40 x 40 mm that stands on a stem of 10 x 10 mm and nothing else",
      piece: piece(unite(block(5, 0, 10), block(20, 10, 14))),
      built: "a ledge sticks out 21.21 mm over air at x -20.0, y -20.0, z 10.0",
    },
  ],
  "part-in-keep-out": [
    {
      level: "error",
      body: "a block of 20 x 20 x 10 mm through which an M5 bolt goes, without a hole for it",
      piece: piece(block(10, 0, 10), { keepOuts: [{ name: "M5 bolt", body: cylinder(2.5, -5, 15) }] }),
      built: "the part reaches 194.11 mm3 into the space of the M5 bolt",
    },
  ],
  "contact-face-missing": [
    {
      level: "error",
      body: "a block of 20 x 20 x 10 mm, of whose upper face 400 mm2 should bear, and 300 mm2 are there",
      piece: piece(carve(block(10, 0, 10), [prism(rectangle(5, -11, 11, 11), 8, 11)]), {
        contacts: [{ name: "upper face", area: 400, point: [0, 0, 10], normal: [0, 0, 1], reach: 20 }],
      }),
      built: "the upper face touches on 300.0 mm2 of 400.0 mm2",
    },
  ],
} as const satisfies Readonly<Partial<Record<DefectName, readonly BodyExample[]>>>;
