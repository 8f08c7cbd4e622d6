import { describe, expect, test } from "vitest";
import type { Lifted } from "../../src/geometry/assembly.ts";
import { rectangle } from "../../src/geometry/profile.ts";
import { cylinder, moved, prism, turned } from "../../src/geometry/solid.ts";
import { kernel } from "../support/kernel.ts";

const block = (x: number, y: number, z: number) => prism(rectangle(0, 0, x, y), 0, z);
const still = (solid: Lifted["solid"], lift = 0): Lifted => ({ solid, lift });

/** Area that two circles of one radius share, centres `apart`. Source: plane geometry, circular segments. */
const lens = (radius: number, apart: number) =>
  2 * radius ** 2 * Math.acos(apart / 2 / radius) - (apart / 2) * Math.sqrt(4 * radius ** 2 - apart ** 2);

describe("what two solids share", () => {
  test("two boxes: 4 x 5 x 2 mm", () => {
    const overlap = kernel.assemble((hall) =>
      hall.overlap(still(block(10, 10, 10)), still(moved(block(10, 10, 10), [6, 5, 8]))),
    );
    expect(overlap?.volume).toBeCloseTo(4 * 5 * 2, 6);
    expect(overlap?.box).toEqual({ min: [6, 5, 8], max: [10, 10, 10] });
  });

  test("two cylinders beside each other: a lens, as deep as they are too near", () => {
    const one = cylinder(20, 0, 10);
    const overlap = kernel.assemble((hall) => hall.overlap(still(one), still(moved(one, [37, 0, 0]))));
    const { volume = 0, box } = overlap ?? {};
    // Polygons inside the circles, 0.05 mm at most: the lens of 3 mm is smaller by at most 0.1 mm in its depth.
    expect(volume).toBeLessThanOrEqual(10 * lens(20, 37));
    expect(volume).toBeGreaterThan(10 * lens(20, 37.1));
    expect((box?.max[0] ?? 0) - (box?.min[0] ?? 0)).toBeCloseTo(3, 0);
  });

  test("two rods that cross at right angles: 16/3 of the cube of their radius", () => {
    // Source: the solid that Archimedes and Zu Chongzhi measured.
    const rod = cylinder(6, -30, 30);
    const overlap = kernel.assemble((hall) => hall.overlap(still(rod), still(turned(rod, "x", 90))));
    expect(overlap?.volume).toBeGreaterThan((16 / 3) * 6 ** 3 * 0.97);
    expect(overlap?.volume).toBeLessThanOrEqual((16 / 3) * 6 ** 3);
  });

  test("nothing, when they touch, turned or not, or stand apart", () => {
    kernel.assemble((hall) => {
      const long = block(600, 30, 30);
      expect(hall.overlap(still(long), still(moved(long, [0, 30, 0])))).toBeUndefined();
      const lying = turned(long, "z", 37);
      const beside = turned(moved(long, [0, 30, 0]), "z", 37);
      expect(hall.overlap(still(lying), still(beside))?.volume ?? 0).toBeLessThan(0.01);
      expect(hall.overlap(still(long), still(moved(long, [0, 40, 0])))).toBeUndefined();
    });
  });

  test("follows the lifts of both, and tells the place where they are lifted to", () => {
    kernel.assemble((hall) => {
      const [one, other] = [block(10, 10, 10), moved(block(10, 10, 10), [0, 0, 100])];
      expect(hall.overlap(still(one), still(other))).toBeUndefined();
      expect(hall.overlap(still(one, 95), still(other))?.box).toEqual({ min: [0, 0, 100], max: [10, 10, 105] });
      expect(hall.overlap(still(one, 200), still(other, 107))?.box).toEqual({ min: [0, 0, 207], max: [10, 10, 210] });
    });
  });

  test("leaves out the rooms, wherever their owner is lifted to", () => {
    kernel.assemble((hall) => {
      const [one, other, room] = [block(10, 10, 10), block(4, 4, 4), block(4, 4, 3)];
      expect(hall.overlap(still(one, 50), still(other, 50), [still(room, 50)])?.volume).toBeCloseTo(16, 6);
      expect(hall.overlap(still(one, 50), still(other, 50), [still(room, 51)])?.box.max[2]).toBeCloseTo(51, 6);
      expect(hall.overlap(still(one), still(other), [still(block(4, 4, 4))])).toBeUndefined();
    });
  });
});

describe("the gap between two solids", () => {
  test("is their distance, up to where it is looked for", () => {
    kernel.assemble((hall) => {
      const [one, other] = [block(10, 10, 10), moved(block(10, 10, 10), [13, 14, 0])];
      expect(hall.gap(still(one), still(other), 9)).toBeCloseTo(5, 5);
      expect(hall.gap(still(one), still(other), 2)).toBe(2);
      expect(hall.gap(still(one), still(other, 22), 20)).toBeCloseTo(13, 5);
      expect(hall.gap(still(one), still(moved(one, [3, 3, 3])), 2)).toBe(0);
    });
  });
});
