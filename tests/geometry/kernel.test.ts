import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  disc,
  grown,
  hexagon,
  hullOf,
  joined,
  opening,
  placed,
  rectangle,
  slotAlong,
  without,
} from "../../src/geometry/profile.ts";
import { circumscribed, segments } from "../../src/geometry/segments.ts";
import {
  alongX,
  alongY,
  carve,
  common,
  cylinder,
  hullSolid,
  mirrored,
  moved,
  prism,
  revolved,
  rod,
  turned,
  unite,
} from "../../src/geometry/solid.ts";
import { kernel, measured, meshVolume } from "../support/kernel.ts";

const ngon = (sides: number, cornerRadius: number) => (sides / 2) * cornerRadius ** 2 * Math.sin((2 * Math.PI) / sides);

describe("circles as polygons", () => {
  test.each([
    [11.15, 76],
    [11.16, 76],
    [5, 52],
    [2.75, 40],
    [0.5, 24],
  ])("a radius of %d mm takes %d sides at a chord error of 0.01 mm", (radius, sides) => {
    expect(segments(radius)).toBe(sides);
    expect(radius * (1 - Math.cos(Math.PI / sides))).toBeLessThanOrEqual(0.01);
  });

  test("a pocket wanted 22.30 has corners on 22.3191, wanted 22.12 with 0.20 shrink on 22.3391", () => {
    expect(2 * circumscribed(22.3 / 2, segments(22.3 / 2))).toBeCloseTo(22.3191, 4);
    expect(2 * circumscribed((22.12 + 0.2) / 2, segments((22.12 + 0.2) / 2))).toBeCloseTo(22.3391, 4);
  });

  test("an opening's box is its diameter, a disc's corners are on its circle", () => {
    const hole = measured(prism(opening(22.32), 0, 1));
    expect(hole.box.max[0]).toBeCloseTo(11.16, 5);
    expect(hole.box.min[1]).toBeCloseTo(-11.16, 5);
    expect(measured(prism(disc(10), 0, 1)).volume).toBeCloseTo(ngon(segments(10), 10), 3);
  });

  test("a finer chord tolerance gives more sides", () => {
    const coarse = kernel.build(cylinder(10, 0, 1), (body) => body.mesh().triangles.length, 0.05);
    const fine = kernel.build(cylinder(10, 0, 1), (body) => body.mesh().triangles.length, 0.0125);
    expect(fine / coarse).toBeCloseTo(2, 0);
  });
});

describe("solids", () => {
  test("prisms, cuts and unions have the volumes of school geometry", () => {
    expect(measured(prism(rectangle(0, 0, 4, 3), 1, 3)).volume).toBeCloseTo(24, 6);
    expect(
      measured(carve(prism(rectangle(0, 0, 10, 10), 0, 2), [prism(rectangle(2, 2, 4, 4), -1, 3)])).volume,
    ).toBeCloseTo(192, 5);
    expect(measured(unite(prism(rectangle(0, 0, 2, 2), 0, 2), prism(rectangle(1, 0, 3, 2), 0, 2))).volume).toBeCloseTo(
      12,
      5,
    );
    expect(measured(common(prism(rectangle(0, 0, 2, 2), 0, 2), prism(rectangle(1, 0, 3, 2), 0, 2))).volume).toBeCloseTo(
      4,
      5,
    );
    expect(
      measured(hullSolid(prism(rectangle(0, 0, 1, 1), 0, 1), prism(rectangle(2, 0, 3, 1), 0, 1))).volume,
    ).toBeCloseTo(3, 5);
  });

  test("a hollow profile stays hollow, turned, moved and grown", () => {
    const frame = without(rectangle(-5, -5, 5, 5), opening(4));
    const hole = ngon(segments(2), circumscribed(2, segments(2)));
    expect(measured(prism(frame, 0, 1)).volume).toBeCloseTo(100 - hole, 3);
    expect(measured(prism(placed(frame, [30, 0], 45), 0, 1)).volume).toBeCloseTo(100 - hole, 3);
    expect(
      measured(prism(grown(without(rectangle(-9, -9, 9, 9), rectangle(-5, -5, 5, 5)), 1), 0, 1)).volume,
    ).toBeCloseTo(400 - (4 - Math.PI) - 64, 1);
  });

  test("slots and hexagons have their sizes", () => {
    const { box } = measured(prism(slotAlong([1, 2], 90, 5.5, 7.7), 0, 1));
    expect(box.max[0] - box.min[0]).toBeCloseTo(5.5, 3);
    expect(box.max[1] - box.min[1]).toBeCloseTo(7.7, 3);
    expect(measured(prism(hexagon(8), 0, 1)).volume).toBeCloseTo(8 ** 2 * Math.cos(Math.PI / 6), 3);
  });

  test("alongX and alongY put the profile upright", () => {
    const profile = rectangle(1, 2, 4, 8);
    expect(measured(alongY(profile, 10, 15)).box).toEqual({ min: [1, 10, 2], max: [4, 15, 8] });
    expect(measured(alongX(profile, 10, 15)).box).toEqual({ min: [10, 1, 2], max: [15, 4, 8] });
    expect(measured(alongY(profile, 10, 15)).volume).toBeCloseTo(90, 5);
    expect(measured(alongX(profile, 10, 15)).volume).toBeCloseTo(90, 5);
  });

  test("turning, mirroring and rods keep volume and land where they should", () => {
    const block = prism(rectangle(1, 1, 2, 3), 0, 4);
    expect(measured(turned(block, "z", 90)).box).toEqual({ min: [-3, 1, 0], max: [-1, 2, 4] });
    expect(measured(mirrored(block, "x")).box).toEqual({ min: [-2, 1, 0], max: [-1, 3, 4] });
    expect(measured(mirrored(block, "z")).volume).toBeCloseTo(8, 5);
    const { box } = measured(rod([0, 0, 5], [1, 0, 0], 2, 10));
    expect(box.min[0]).toBeCloseTo(0, 5);
    expect(box.max[0]).toBeCloseTo(10, 5);
    expect(box.max[2]).toBeCloseTo(7, 1);
  });

  test("a stepped tool is as wide as its openings ask", () => {
    const tool = revolved(
      [
        [0, 0],
        [3, 0],
        [3, 2],
        [5, 2],
        [5, 4],
        [0, 4],
      ],
      "around",
      5,
    );
    const { box, volume } = measured(tool);
    expect(box.max[0]).toBeCloseTo(5, 5);
    expect(volume).toBeGreaterThan(Math.PI * (9 * 2 + 25 * 2));
    expect(volume).toBeLessThan(Math.PI * (9 * 2 + 25 * 2) * 1.01);
  });

  test("two bodies that only touch share nothing", () => {
    const shared = kernel.build(prism(rectangle(0, 0, 5, 5), 0, 5), (body) =>
      body.shared(prism(rectangle(5, 0, 9, 5), 0, 5)),
    );
    expect(shared).toBeLessThan(1e-9);
  });

  test("a bolt in its hole, head on the face, shares nothing with the plate", () => {
    const plate = prism(without(rectangle(-10, -10, 10, 10), opening(5.5)), 0, 8);
    const bolt = unite(prism(disc(2.5), -40, 8), prism(disc(4.25), 8, 13));
    expect(kernel.build(plate, (body) => body.shared(bolt))).toBeLessThan(1e-9);
  });

  test.each([0.002, 0.1, 3])("a body that reaches %d mm into another shares that much of it", (depth) => {
    const plate = prism(rectangle(-10, -10, 10, 10), 0, 8);
    const block = prism(rectangle(-2, -3, 2, 3), 8 - depth, 20);
    expect(kernel.build(plate, (body) => body.shared(block))).toBeCloseTo(24 * depth, 6);
  });
});

describe("the bed-edge chamfer", () => {
  test("takes a known amount off a square", () => {
    const foot = 0.4;
    // Prismatoid between the inset square and the full one, then the rest of the height.
    const inset = 10 - 2 * foot;
    const lowest = (foot / 3) * (inset ** 2 + 100 + inset * 10);
    expect(measured(prism(rectangle(0, 0, 10, 10), 2, 7, foot)).volume).toBeCloseTo(lowest + 100 * (5 - foot), 4);
  });

  test("holds for any union of rectangles and discs with a hole", () => {
    const size = fc.double({ min: 6, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (wide, deep, radius) => {
        const outline = without(
          joined(rectangle(-wide, 0, wide, deep), disc(radius), hullOf(disc(4, [wide, deep]), disc(5))),
          opening(4),
        );
        const { mesh, volume, pieces } = measured(prism(outline, -3, 5, 0.4));
        const plain = measured(prism(outline, -3, 5));
        expect(pieces).toBe(1);
        expect(volume).toBeLessThan(plain.volume);
        expect(volume).toBeGreaterThan(plain.volume * 0.95);
        expect(meshVolume(mesh)).toBeCloseTo(volume, 1);
      }),
      { numRuns: 60 },
    );
  });
});

test("what is built is freed: memory stays flat over many builds", () => {
  const plate = carve(
    prism(rectangle(-40, -30, 40, 30), 0, 10),
    Array.from({ length: 8 }, (_, hole) => moved(cylinder(2.75, -1, 11), [-36 + 9 * hole, 0, 0])),
  );
  const size = () => kernel.build(plate, (body) => body.volume());
  const first = size();
  for (let round = 0; round < 20; round++) size();
  const before = process.memoryUsage().rss;
  for (let round = 0; round < 60; round++) size();
  expect(process.memoryUsage().rss - before).toBeLessThan(60e6);
  expect(size()).toBe(first);
});
