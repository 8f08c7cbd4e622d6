import { describe, expect, test } from "vitest";
import type { Mesh, Vec3 } from "../../../src/geometry/mesh.ts";
import type { Piece } from "../../../src/parts/piece.ts";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import type { Plan } from "../../../src/stage/index.ts";
import type { FootChoice } from "../../../src/stage/machine.ts";
import { measured } from "../../support/kernel.ts";
import { widePlan } from "../../support/plans.ts";
import { printerWith } from "../../support/printer.ts";
import { turnedPlan } from "../../support/turned-plan.ts";
import { feetOf } from "./hand-made.ts";

type Change = Readonly<Record<string, unknown>>;
type Box = readonly [Vec3, Vec3];

/** Without a key, which enters the bar's slot, so that the bar may be taken as a full box. */
const FOOT = { thrust: "collar", pulley: "40 teeth 2 mm", locate: "none", material: "PETG" };

/** A place of the part's own frame in the machine: turned about z, then moved. Written out once more. */
function placed({ part }: FootChoice, [x, y, z]: Vec3): Vec3 {
  const { origin, angle } = part.placement;
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  return [origin[0] + c * x - s * y, origin[1] + s * x + c * y, origin[2] + z];
}

const pieceOf = (foot: FootChoice): Piece => screwFoot.design(foot.part.parameters, printerWith()).pieces()[0] as Piece;

function corners(mesh: Mesh, foot: FootChoice): Vec3[] {
  return Array.from({ length: mesh.positions.length / 3 }, (_, index) => {
    const [x = 0, y = 0, z = 0] = mesh.positions.subarray(3 * index, 3 * index + 3);
    return placed(foot, [x, y, z]);
  });
}

/** How far a place lies inside a box of the machine; negative outside. */
const inside = ([x, y, z]: Vec3, [low, high]: Box) =>
  Math.min(x - low[0], high[0] - x, y - low[1], high[1] - y, z - low[2], high[2] - z);

// The bars of the wide machine as boxes, written out from the plan's middle lines and 30 mm, of the post 20 mm.
const FRONT: Box = [
  [0, 0, -30],
  [760, 30, 0],
];
const LEFT: Box = [
  [0, 30, -30],
  [30, 530, 0],
];
const BACK: Box = [
  [0, 530, -30],
  [760, 560, 0],
];
const POST: Box = [
  [5, 270, 0],
  [25, 290, 500],
];

interface Case {
  readonly screw: "A" | "C";
  readonly at: [number, number];
  readonly more: Change;
  readonly bars: readonly Box[];
  /** Returns how far a place lies off the face of the bar that the foot is bolted to. */
  readonly off: (at: Vec3) => number;
}

const CASES: readonly [string, Case][] = [
  ["on-side of the front bar", { screw: "A", at: [150, 62], more: {}, bars: [FRONT], off: ([, y]) => y - 30 }],
  ["on-side of the back bar", { screw: "C", at: [380, 498], more: {}, bars: [BACK], off: ([, y]) => 530 - y }],
  ["on-side of the left bar", { screw: "A", at: [60, 120], more: { bar: "left" }, bars: [LEFT], off: ([x]) => x - 30 }],
  [
    "on-top, over the bar",
    { screw: "A", at: [150, 15], more: { mount: "on-top" }, bars: [FRONT], off: ([, , z]) => z },
  ],
  ["on-top, beside it", { screw: "A", at: [150, 39], more: { mount: "on-top" }, bars: [FRONT], off: ([, , z]) => z }],
  ["under", { screw: "A", at: [150, 52], more: { mount: "under" }, bars: [FRONT], off: ([, , z]) => -30 - z }],
  [
    "on-post",
    { screw: "A", at: [52, 280], more: { mount: "on-post", bar: "post-left" }, bars: [POST], off: ([x]) => x - 25 },
  ],
  [
    "in-corner, named by the front bar",
    {
      screw: "A",
      at: [56, 58],
      more: { mount: "in-corner", bar: "front" },
      bars: [FRONT, LEFT],
      off: ([, y]) => y - 30,
    },
  ],
  [
    "in-corner, named by the left bar",
    { screw: "A", at: [56, 58], more: { mount: "in-corner", bar: "left" }, bars: [FRONT, LEFT], off: ([x]) => x - 30 },
  ],
];

function planOf({ screw, at, more }: Case): Plan {
  const { bar, ...foot } = more;
  const own = { at, ...(bar === undefined ? {} : { bar }), foot };
  return widePlan({ foot: FOOT, motor: { plateTop: 20 }, screws: { [screw]: own } });
}

describe.each(CASES)("a foot %s", (_, one) => {
  const { feet, diagnostics } = feetOf(planOf(one));
  const foot = feet.find(({ screw }) => screw === one.screw) as FootChoice;

  test("has its bearing's axis on the screw's, and its seat where the choice says", () => {
    expect(diagnostics).toEqual([]);
    const bearing = pieceOf(foot).keepOuts.find(({ name }) => name.startsWith("bearing"));
    const { box } = measured((bearing as NonNullable<typeof bearing>).body);
    const middle = placed(foot, [(box.min[0] + box.max[0]) / 2, (box.min[1] + box.max[1]) / 2, box.min[2]]);
    expect(middle[0]).toBeCloseTo(one.at[0], 6);
    expect(middle[1]).toBeCloseTo(one.at[1], 6);
    expect(middle[2]).toBeCloseTo(foot.seatOverDatum + foot.shim, 6);
  });

  test("touches the face of its bar and stands in no bar", () => {
    const { mesh } = measured(pieceOf(foot).solid);
    const all = corners(mesh, foot);
    const near = all.filter((at) => Math.abs(one.off(at)) < 1e-4);
    expect(near.length).toBeGreaterThan(8);
    const deepest = Math.max(...one.bars.map((bar) => Math.max(...all.map((at) => inside(at, bar)))));
    expect(deepest).toBeLessThan(1e-4);
    // The face lies before the bar, not past its end.
    const long = near.filter((at) => one.bars.some((bar) => inside(at, bar) > -1e-4));
    expect(long.length).toBeGreaterThanOrEqual(4);
  });

  test("turns with the machine and stays the same part", () => {
    const turned = feetOf(turnedPlan(planOf(one), 33, [100, -40])).feet.find(({ screw }) => screw === one.screw);
    expect(turned?.part.parameters).toEqual(foot.part.parameters);
    const by = ((turned?.part.placement.angle ?? 0) - foot.part.placement.angle + 720) % 360;
    expect(by).toBeCloseTo(33, 5);
  });
});
