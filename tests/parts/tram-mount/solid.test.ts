import { describe, expect, test } from "vitest";
import type { Mesh, Vec3 } from "../../../src/geometry/mesh.ts";
import { tramMount } from "../../../src/parts/tram-mount/index.ts";
import { measured } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { firstHit } from "./first-hit.ts";

const printer = printerWith();
const LEFT: Vec3 = [-1, 0, 0];
const RIGHT: Vec3 = [1, 0, 0];
const BACK: Vec3 = [0, -1, 0];
const FRONT: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const DOWN: Vec3 = [0, 0, -1];

/** The finished body in its own frame: bolt axis at the origin, cup floor at z = 0, bar at negative y. */
function mounted(parameters: object) {
  const design = tramMount.design(tramMount.schema.parse(parameters) as never, printer);
  const [piece] = design.pieces();
  if (piece === undefined) throw new Error("nothing to print");
  return measured(piece.solid);
}

/** The width of a gap through a point. */
function gap(mesh: Mesh, at: Vec3, one: Vec3, other: Vec3): number {
  return firstHit(mesh, at, one) + firstHit(mesh, at, other);
}

/** Height of the first face below a point high above the part. */
const topAt = (mesh: Mesh, x: number, y: number) => 50 - firstHit(mesh, [x, y, 50], DOWN);

describe("a slot mount against the side of a bar", () => {
  const { mesh, box, volume } = mounted({});

  test("has wings from -8 to 8, 30 wide each way, and its face 17 behind the bolt", () => {
    expect(box.min).toEqual([-30, expect.closeTo(-18.2, 5), -8]);
    expect(box.max).toEqual([30, 15, 8]);
    expect(firstHit(mesh, [28, -40, -6], FRONT)).toBeCloseTo(23, 5);
    expect(firstHit(mesh, [0, -40, 0], FRONT)).toBeCloseTo(21.8, 5);
  });

  test("has a slot 5.5 x 7.7 along the growth, 0.2 wider as drawn", () => {
    for (const z of [-7, -4, -0.5]) {
      expect(gap(mesh, [0, 0, z], LEFT, RIGHT)).toBeCloseTo(5.7, 2);
      expect(gap(mesh, [0, 0, z], BACK, FRONT)).toBeCloseTo(7.9, 2);
    }
  });

  test("its first layer leaves room for the spread, and no more", () => {
    expect(gap(mesh, [0, 0, -7.9], LEFT, RIGHT)).toBeCloseTo(5.7 + 0.6, 2);
    expect(gap(mesh, [0, 0, -7.75], LEFT, RIGHT)).toBeCloseTo(5.7, 2);
  });

  test("has a cup 10.8 wide, 2.2 longer, 4 deep, with a 2.4 wall as drawn and a lead-in of 1", () => {
    expect(gap(mesh, [0, 0, 1], LEFT, RIGHT)).toBeCloseTo(11, 2);
    expect(gap(mesh, [0, 0, 1], BACK, FRONT)).toBeCloseTo(13.2, 2);
    expect(topAt(mesh, 0, 8.95)).toBeCloseTo(4, 5);
    expect(topAt(mesh, 5, 0)).toBeCloseTo(0, 5);
    expect(Math.abs(firstHit(mesh, [20, 0, 1.5], LEFT) - (20 - 7.9))).toBeLessThan(0.0101);
    expect(gap(mesh, [0, 0, 3.5], LEFT, RIGHT)).toBeCloseTo(12, 2);
  });

  test("has level holes at x 22 either side, in line with the slot of the bar", () => {
    for (const x of [22, -22]) {
      const at: Vec3 = [x, -14, 0];
      expect(gap(mesh, at, LEFT, RIGHT)).toBeCloseTo(5.75, 2);
      expect(firstHit(mesh, at, DOWN)).toBeCloseTo(2.875, 2);
      expect(firstHit(mesh, at, UP)).toBeCloseTo(2.875 + 0.3, 2);
      expect(firstHit(mesh, at, BACK)).toBe(Number.POSITIVE_INFINITY);
    }
  });

  test("its volume lies between the plate alone and plate, wings and gussets", () => {
    expect(volume).toBeGreaterThan(30 * 32 * 8);
    expect(volume).toBeLessThan(30 * 32 * 8 + 60 * 6 * 16 + 2 * 5 * 8 * 8);
  });
});

test.each([
  [0, 7.9, 5.7],
  [180, 7.9, 5.7],
  [270, 5.7, 7.9],
] as const)("growth along %i deg turns the slot", (growthAngle, across, along) => {
  const { mesh } = mounted({ growthAngle });
  expect(gap(mesh, [0, 0, -4], LEFT, RIGHT)).toBeCloseTo(across, 2);
  expect(gap(mesh, [0, 0, -4], BACK, FRONT)).toBeCloseTo(along, 2);
});

test("a slot at an angle is as long as one along an axis", () => {
  const { mesh } = mounted({ growthAngle: 30 });
  const [x, y] = [Math.cos(Math.PI / 6), 0.5];
  expect(gap(mesh, [0, 0, -4], [x, y, 0], [-x, -y, 0])).toBeCloseTo(7.9, 1);
  expect(gap(mesh, [0, 0, -4], [-y, x, 0], [y, -x, 0])).toBeCloseTo(5.7, 1);
});

test("a free mount is a round 7.2 hole under a round cup, wider by the growth", () => {
  const { mesh } = mounted({ type: "free" });
  for (const way of [
    [LEFT, RIGHT],
    [BACK, FRONT],
  ] as const) {
    expect(gap(mesh, [0, 0, -4], ...way)).toBeCloseTo(7.4, 2);
    expect(gap(mesh, [0, 0, 1], ...way)).toBeCloseTo(11 + 2.2, 2);
  }
});

describe("a captive nut", () => {
  const { mesh } = mounted({ joint: "captive-nut" });

  test("has 2.0 of floor, 5.0 of room and one closing layer under 3.0 of roof", () => {
    expect(firstHit(mesh, [3.5, 0, -20], UP)).toBeCloseTo(10, 4);
    expect(firstHit(mesh, [3.5, 0, -9.9], UP)).toBeCloseTo(1.9, 4);
    expect(firstHit(mesh, [3.5, 0, -7.9], UP)).toBeCloseTo(4.9, 4);
    // On the axis: free from below to the membrane, and 0.2 higher the open slot begins.
    expect(firstHit(mesh, [0, 0, -20], UP)).toBeCloseTo(17, 4);
    expect(topAt(mesh, 0, 0)).toBeCloseTo(-2.8, 4);
  });

  test("holds two flats 8.25 apart plus the growth of the walls, and lets the nut slide 1.1 each way", () => {
    expect(gap(mesh, [0, 0, -5], LEFT, RIGHT)).toBeCloseTo(8.25 + 0.1, 3);
    expect(firstHit(mesh, [0, 0, -5], BACK)).toBeCloseTo(8 / Math.sqrt(3) + 0.125 + 1.1, 3);
    expect(firstHit(mesh, [0, 0, -5], FRONT)).toBe(Number.POSITIVE_INFINITY);
  });

  test("narrows by 0.15 on each side beyond the slide", () => {
    const ridge = 8 / Math.sqrt(3) + 1.1 + 0.125 + 0.5;
    expect(gap(mesh, [0, ridge, -5], LEFT, RIGHT)).toBeCloseTo(8.35 - 0.3, 3);
    expect(gap(mesh, [0, ridge + 2, -5], LEFT, RIGHT)).toBeCloseTo(8.35, 3);
  });

  test.each([
    [270, FRONT],
    [0, RIGHT],
    [180, RIGHT],
  ] as const)("opens away from the bar when the plate grows along %i deg", (growthAngle, out) => {
    const { mesh: turned } = mounted({ joint: "captive-nut", growthAngle });
    expect(firstHit(turned, [0, 0, -5], out)).toBe(Number.POSITIVE_INFINITY);
    expect(firstHit(turned, [0, 0, -5], BACK)).toBeLessThan(8);
  });
});

test("an insert's bore is 10.5 deep from below and its roof slopes to the bolt's hole", () => {
  const { mesh } = mounted({ type: "fixed", joint: "insert" });
  expect(gap(mesh, [0, 0, -8], LEFT, RIGHT)).toBeCloseTo(6.6, 2);
  expect(gap(mesh, [0, 0, -1], LEFT, RIGHT)).toBeCloseTo(5.5, 2);
  expect(firstHit(mesh, [2.76, 0, -14], UP)).toBeGreaterThan(1.4 + 10.4);
  expect(firstHit(mesh, [2.76, 0, -14], UP)).toBeLessThan(1.4 + 10.51);
  // Halfway up the cone the bore is half as much narrower: 45 degrees over the 0.55 mm of the step.
  expect(gap(mesh, [0, 0, -2.1 - 0.275], LEFT, RIGHT)).toBeCloseTo(6.05, 2);
});

describe("a mount on the top of a bar", () => {
  const { mesh, box } = mounted({ mount: "on-top" });

  test("runs 20 mm on over the bar", () => {
    expect(box.min[1]).toBeCloseTo(-15.5 - 20, 5);
    expect([box.min[0], box.max[0], box.max[2]]).toEqual([-20, 20, 4]);
  });

  test("has upright holes 12 either side of the middle in counterbores 1.8 deep", () => {
    for (const x of [12, -12]) {
      expect(gap(mesh, [x, -25.5, -5], LEFT, RIGHT)).toBeCloseTo(5.7, 2);
      expect(gap(mesh, [x, -25.5, -1], LEFT, RIGHT)).toBeCloseTo(10.8, 2);
      expect(topAt(mesh, x + 4, -25.5)).toBeCloseTo(-1.8, 4);
    }
  });
});

describe("a mount over the end of a bar", () => {
  const { mesh, box } = mounted({ mount: "end" });

  test("has lugs 20.2 apart, 6 thick and 30 long", () => {
    expect(gap(mesh, [0, -40, -4], LEFT, RIGHT)).toBeCloseTo(20.2, 4);
    expect([box.min[0], box.max[0]]).toEqual([expect.closeTo(-16.1, 5), expect.closeTo(16.1, 5)]);
    expect(box.min[1]).toBeCloseTo(-47, 5);
    expect(firstHit(mesh, [0, -40, -4], FRONT)).toBeCloseTo(23, 4);
  });

  test("has one bolt through each lug, 15 from the bar's end", () => {
    for (const x of [13, -13]) {
      expect(gap(mesh, [x, -32, 0], BACK, FRONT)).toBeCloseTo(5.75, 2);
      expect(firstHit(mesh, [x, -32, 0], UP)).toBeCloseTo(3.175, 2);
      expect(firstHit(mesh, [x, -32, 0], x > 0 ? RIGHT : LEFT)).toBe(Number.POSITIVE_INFINITY);
    }
  });
});

test("a part made against an accepted error says so on its front", () => {
  const given = tramMount.schema.parse({}) as never;
  const volumes = ["", "X"].map(
    (mark) => measured(tramMount.design(given, printer, mark).pieces()[0]?.solid as never).volume,
  );
  expect(volumes[1]).toBeLessThan((volumes[0] ?? 0) - 0.5);
});
