import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Vec2 } from "../../src/geometry/mesh.ts";
import { opening, rectangle, slotAlong } from "../../src/geometry/profile.ts";
import { alongY, carve, hullSolid, moved, prism, revolved, type Solid, turned } from "../../src/geometry/solid.ts";
import { stepTools } from "../../src/geometry/step-tools.ts";
import { measured } from "../support/kernel.ts";

const block = prism(rectangle(-30, -30, 30, 30), -10, 10);
const cone: readonly Vec2[] = [
  [0, 6],
  [5, 6],
  [9, 10],
  [9, 11],
  [0, 11],
];

/** Cuts with one tool after the other, so that there is nothing to join. */
function oneByOne(tools: readonly Solid[]): Solid {
  return tools.reduce((body, tool) => carve(body, [tool]), block);
}

describe("round tools about one axis become one stepped tool", () => {
  test("a hole, its counterbore and a countersink", () => {
    const tools = [
      prism(opening(6, [4, 3]), -11, 11),
      prism(opening(12, [4, 3]), 2, 11),
      moved(revolved(cone, "around"), [4, 3, 0]),
    ];
    expect(stepTools(tools)).toHaveLength(1);
    const whole = measured(carve(block, tools)).volume;
    // A polygon within 0.01 mm of its circle has 2 pi r x 0.01 mm2 more or less at most.
    expect(Math.abs(whole - measured(oneByOne(tools)).volume)).toBeLessThan(20 * 2 * Math.PI * 9 * 0.01);
  });

  test("a slot and its wider mouth, however they are turned", () => {
    const reach = fc.double({ min: 0.1, max: 6, noNaN: true });
    const angle = fc.double({ min: -360, max: 360, noNaN: true });
    fc.assert(
      fc.property(reach, angle, (by, azimuth) => {
        const [x, y] = [by * Math.cos((azimuth * Math.PI) / 180), by * Math.sin((azimuth * Math.PI) / 180)];
        const tools = [
          prism(slotAlong([1, 2], azimuth, 5, 5 + 2 * by), -11, 11),
          hullSolid(...[-1, 1].map((way) => moved(revolved(cone, "around"), [1 + way * x, 2 + way * y, 0]))),
          prism(slotAlong([1, 2], azimuth + 180, 8, 8 + 2 * by), -11, -8),
        ];
        expect(stepTools(tools)).toHaveLength(1);
        const { volume, box } = measured(carve(block, tools));
        expect(Math.abs(volume - measured(oneByOne(tools)).volume)).toBeLessThan(6);
        expect(box).toEqual(measured(block).box);
      }),
      { numRuns: 30 },
    );
  });

  test("the drawn-out tool is as wide and as long as its opening", () => {
    const tools = [prism(slotAlong([0, 0], 90, 5, 9), 0, 4), prism(slotAlong([0, 0], 90, 5, 9), 3, 8)];
    const [only] = stepTools(tools);
    if (only === undefined) throw new Error("no tool");
    const { box } = measured(only);
    expect(box.max[0] - box.min[0]).toBeCloseTo(5, 5);
    expect(box.max[1] - box.min[1]).toBeCloseTo(9, 5);
    expect([box.min[2], box.max[2]]).toEqual([0, 8]);
  });

  test("tools about other axes, of other reach, turned over or not round stay as they are", () => {
    const tools = [
      prism(opening(6), -11, 11),
      prism(opening(6, [0.001, 0]), -11, 11),
      prism(slotAlong([0, 0], 0, 6, 8), -11, 11),
      prism(slotAlong([0, 0], 30, 6, 8), -11, 11),
      prism(slotAlong([0, 0], 0, 6, 9), -11, 11),
      turned(prism(opening(6), 0, 5), "x", 90),
      alongY(opening(6), 0, 5),
      prism(rectangle(-3, -3, 3, 3), 0, 5),
      prism(opening(6), 0, 5, 0.4),
    ];
    expect(stepTools(tools)).toHaveLength(tools.length);
  });

  test("the hull of a hollow shape at two places is not that shape drawn out", () => {
    const hollow = revolved(
      [
        [0, 0],
        [5, 0],
        [2, 3],
        [5, 6],
        [0, 6],
      ],
      "around",
    );
    const hull = hullSolid(hollow, moved(hollow, [4, 0, 0]));
    expect(stepTools([hull])).toEqual([hull]);
  });
});
