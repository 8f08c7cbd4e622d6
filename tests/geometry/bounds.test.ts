import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boundsOf } from "../../src/geometry/bounds.ts";
import type { Box, Vec3 } from "../../src/geometry/mesh.ts";
import { disc, grown, hullOf, joined, opening, placed, rectangle, simplified } from "../../src/geometry/profile.ts";
import {
  carve,
  common,
  cylinder,
  hullSolid,
  mirrored,
  moved,
  prism,
  revolved,
  type Solid,
  turned,
  unite,
} from "../../src/geometry/solid.ts";
import { kernel } from "../support/kernel.ts";

const boxOf = (solid: Solid): Box => kernel.build(solid, (body) => body.box(), 0.001);

/** The bounds hold the box, and reach past it by no more than openings are drawn larger than their circle. */
function expectHeld(bounds: Box, box: Box, slack: number) {
  for (const axis of [0, 1, 2] as const) {
    const [below, above] = [box.min[axis] - bounds.min[axis], bounds.max[axis] - box.max[axis]];
    expect(Math.min(below, above)).toBeGreaterThan(-1e-6);
    expect(Math.max(below, above)).toBeLessThan(slack);
  }
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const profile = fc.oneof(
  fc.tuple(number(1, 20), number(1, 20)).map(([w, h]) => rectangle(-w, -h, w / 2, h)),
  fc.tuple(number(1, 9), number(-9, 9), number(-9, 9)).map(([r, x, y]) => disc(r, [x, y])),
  fc.tuple(number(2, 9), number(0, 360)).map(([d, a]) => placed(hullOf(opening(d), opening(d, [12, 3])), [4, -2], a)),
  number(0.2, 3).map((by) => grown(rectangle(0, 0, 10, 4), by)),
);
const leaf: fc.Arbitrary<Solid> = fc.oneof(
  fc.tuple(profile, number(-9, 0), number(1, 9)).map(([of, low, high]) => prism(of, low, high)),
  fc.tuple(number(1, 9), number(1, 9)).map(([radius, height]) => cylinder(radius, -height, height)),
);
const solid = fc.letrec<{ tree: Solid }>((tie) => ({
  tree: fc.oneof(
    { depthSize: "small" },
    leaf,
    fc.tuple(tie("tree"), number(-50, 50), number(-50, 50)).map(([of, x, z]) => moved(of, [x, 7, z])),
    fc
      .tuple(tie("tree"), fc.constantFrom<"x" | "y" | "z">("x", "y", "z"), number(0, 360))
      .map(([of, axis, angle]) => turned(of, axis, angle)),
    fc.tuple(tie("tree"), fc.constantFrom<"x" | "y" | "z">("x", "y", "z")).map(([of, axis]) => mirrored(of, axis)),
    fc.tuple(tie("tree"), tie("tree")).map(([a, b]) => unite(a, b)),
    fc.tuple(tie("tree"), tie("tree")).map(([a, b]) => hullSolid(a, b)),
  ),
})).tree;

describe("the box round a solid, not evaluated", () => {
  test("is the box of the kernel's body, however it is put together", () => {
    fc.assert(
      fc.property(solid, (each) => expectHeld(boundsOf(each), boxOf(each), 0.08)),
      { numRuns: 100 },
    );
  });

  test("holds what is cut, common, widened or rounded off, though it may be larger", () => {
    const block = prism(rectangle(0, 0, 10, 10), 0, 10);
    const cases: Solid[] = [
      carve(block, [moved(block, [5, 0, 0])]),
      common(block, moved(turned(block, "z", 30), [3, 0, 4])),
      revolved(
        [
          [1, 0],
          [6, 0],
          [6, 3],
        ],
        "around",
      ),
      { ...(cylinder(3, 0, 5) as Extract<Solid, { kind: "revolved" }>), drawn: 4 },
      { kind: "laid", profile: joined(rectangle(-2, 0, 3, 5)), radius: 12, height: 1 },
      prism(simplified(grown(rectangle(0, 0, 4, 4), -0.5), 0.1), 0, 1),
    ];
    for (const each of cases) {
      expectHeld(boundsOf(each), boxOf(each), Number.POSITIVE_INFINITY);
    }
  });

  test("is tight where solids have a part in common that is a box", () => {
    const block = prism(rectangle(0, 0, 10, 10), 0, 10);
    const low: Vec3 = [6, 0, 0];
    expect(boundsOf(common(block, moved(block, low)))).toEqual({ min: [6, 0, 0], max: [10, 10, 10] });
  });
});
