import { describe, expect, test } from "vitest";
import type { Mesh, Vec3 } from "../../../src/geometry/mesh.ts";
import type { Solid } from "../../../src/geometry/solid.ts";
import { wheelPlate } from "../../../src/parts/wheel-plate/index.ts";
import { kernel, measured, meshVolume } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { firstHit } from "../tram-mount/first-hit.ts";

function plates(asked: object, settings: object = {}) {
  const given = wheelPlate.schema.parse(asked) as Readonly<Record<string, unknown>>;
  return wheelPlate
    .design(given, printerWith(settings as never))
    .pieces()
    .map(({ solid }) => measured(solid as Solid));
}

const across = (mesh: Mesh, [x, y, z]: Vec3, way: Vec3) =>
  firstHit(mesh, [x, y, z], way) + firstHit(mesh, [x, y, z], [-way[0], -way[1], -way[2]]);
const ALONG_X: Vec3 = [1, 0, 0];
const ALONG_Y: Vec3 = [0, 1, 0];
const depth = (mesh: Mesh, x: number, y: number) => firstHit(mesh, [x, y, 50], [0, 0, -1]) - 50;

describe("the plate of four wheels, measured on its triangles", () => {
  const [plate] = plates({});
  const { mesh, box, pieces } = plate as NonNullable<typeof plate>;

  test("is one body, 8 thick, with corners of 10", () => {
    expect(pieces).toBe(1);
    expect(box.max[2] - box.min[2]).toBeCloseTo(8, 6);
    expect(box.max[0] - box.min[0]).toBeCloseTo(63.7, 4);
    expect(box.max[1] - box.min[1]).toBeCloseTo(144, 4);
    const diagonal = Math.SQRT1_2;
    const out = 100 - firstHit(mesh, [21.85 + 100 * diagonal, 62 + 100 * diagonal, -4], [-diagonal, -diagonal, 0]);
    expect(Math.abs(out - 10)).toBeLessThan(0.011);
  });

  test.each([-60, 60])("has axles at -19.85 and 19.85 in the row at %f", (y) => {
    for (const [x, modelled] of [
      [-19.85, 5.5],
      [19.85, 7.4],
    ] as const) {
      expect(firstHit(mesh, [x, y, -4], ALONG_X)).toBeCloseTo(modelled / 2, 4);
      expect(firstHit(mesh, [x, y, -4], [-1, 0, 0])).toBeCloseTo(modelled / 2, 4);
      expect(across(mesh, [x, y, -4], ALONG_Y)).toBeCloseTo(modelled, 4);
      // The first layer spreads into the hole, and a washer lies on that face.
      expect(across(mesh, [x, y, -7.9], ALONG_X)).toBeCloseTo(modelled + 0.6, 4);
      expect(firstHit(mesh, [x, y, 20], [0, 0, -1])).toBe(Number.POSITIVE_INFINITY);
    }
  });

  test.each([-20, 20])("has an arm slot 5.5 x 6.024 at x %f, its counterbore 10.6 x 11.124 and 1.8 deep", (x) => {
    expect(across(mesh, [x, 0, -6], ALONG_X)).toBeCloseTo(5.5 + 0.2, 3);
    expect(across(mesh, [x, 0, -6], ALONG_Y)).toBeCloseTo(6.024 + 0.2, 3);
    expect(across(mesh, [x, 0, -1], ALONG_X)).toBeCloseTo(10.6 + 0.2, 3);
    expect(across(mesh, [x, 0, -1], ALONG_Y)).toBeCloseTo(11.124 + 0.2, 3);
    expect(depth(mesh, x + 4.5, 0)).toBeCloseTo(1.8, 4);
  });

  test("has the lands of its axles flat and whole on both faces", () => {
    for (const [x, y] of [
      [-19.85, 60],
      [19.85, 60],
      [-19.85, -60],
      [19.85, -60],
    ] as const) {
      for (const away of [4.5, 6, 7]) {
        expect(depth(mesh, x + away, y)).toBeCloseTo(0, 5);
        expect(firstHit(mesh, [x + away, y, -50], [0, 0, 1])).toBeCloseTo(42, 5);
      }
    }
  });
});

test("at wanted sizes the volume is 71 023 less bed chamfer and letter", () => {
  const [plate] = plates({}, { holeShrinkVertical: 0, firstLayerSpread: 0 });
  const volume = meshVolume((plate as NonNullable<typeof plate>).mesh);
  // Chamfer 0.4: half its square along 398.2 of edge, 31.9. The letter A: 0.7 wide, 0.4 deep, some 14 long. Holes
  // are polygons outside their circle, corners of the outline inside: up to 0.01 along 115 and 63 of arc, 8 thick.
  expect(volume).toBeGreaterThan(71023 - 31.9 - 5 - 12);
  expect(volume).toBeLessThan(71023 - 31.9);
});

describe("two faces", () => {
  const [one, other] = plates({ wheels: 6, barDepth: 40 }).map(({ mesh }) => mesh) as [Mesh, Mesh];

  test("three wheels a plate: fixed at -x, one eccentric at +x, the other hand the other way", () => {
    for (const [mesh, hand] of [
      [one, 1],
      [other, -1],
    ] as const) {
      for (const y of [-60, 60]) {
        expect(across(mesh, [-19.85 * hand, y, -4], ALONG_X)).toBeCloseTo(5.5, 4);
        expect(depth(mesh, 19.85 * hand, y)).toBeCloseTo(0, 5);
      }
      expect(across(mesh, [19.85 * hand, 0, -4], ALONG_X)).toBeCloseTo(7.4, 4);
      for (const y of [-30, 30]) expect(depth(mesh, 20 * hand + 4.5, y)).toBeCloseTo(1.8, 4);
    }
  });
});

test.each([
  [6, [-60, 0, 60]],
  [8, [-60, -20, 20, 60]],
] as const)("%f wheels on one plate stand in rows at %o", (wheels, rows) => {
  const [plate] = plates({ wheels });
  for (const y of rows) {
    expect(across((plate as NonNullable<typeof plate>).mesh, [-19.85, y, -4], ALONG_X)).toBeCloseTo(5.5, 4);
    expect(across((plate as NonNullable<typeof plate>).mesh, [19.85, y, -4], ALONG_X)).toBeCloseTo(7.4, 4);
  }
});

test("a relief 0.8 deep under the tyres leaves a land of 11.2 round each axle", () => {
  const [plate] = plates({ wheelRelief: 0.8 });
  const { mesh, pieces } = plate as NonNullable<typeof plate>;
  expect(pieces).toBe(1);
  expect(depth(mesh, -19.85 + 5.5, 60)).toBeCloseTo(0, 5);
  expect(depth(mesh, -19.85 + 5.7, 60)).toBeCloseTo(0.8, 4);
  expect(depth(mesh, -19.85 + 12.8, 60)).toBeCloseTo(0.8, 4);
  expect(depth(mesh, -19.85 + 13.1, 60)).toBeCloseTo(0, 5);
});

test("the far plate of a sandwich has the same axles mirrored and no arm slots", () => {
  const [, far] = plates({ sandwich: true, wheelRelief: 0.8 }).map(({ mesh }) => mesh) as [Mesh, Mesh];
  expect(across(far, [19.85, 60, -4], ALONG_X)).toBeCloseTo(5.5, 4);
  expect(across(far, [-19.85, 60, -4], ALONG_X)).toBeCloseTo(7.4, 4);
  expect(depth(far, 20, 0)).toBeCloseTo(0, 5);
  // Its washers are wider than a land, so it has no pockets.
  expect(depth(far, 19.85 + 7, 60)).toBeCloseTo(0, 5);
});

test("an arm 40 high takes two slots 20 apart on each side", () => {
  const [plate] = plates({ arm: "20x40 slot 6" });
  const { mesh } = plate as NonNullable<typeof plate>;
  for (const y of [-10, 10]) expect(across(mesh, [20, y, -6], ALONG_X)).toBeCloseTo(5.7, 3);
});

test("the letters read the right way round on either hand", () => {
  // The letter B has its stem on the left and nothing of it beyond; its mirror image would have it on the right.
  const { pieces } = wheelPlate.design(
    wheelPlate.schema.parse({ wheels: 6, barDepth: 40 }) as Readonly<Record<string, unknown>>,
    printerWith(),
  );
  const other = pieces()[1]?.solid as Solid;
  const { mesh } = kernel.build(other, (body) => ({ mesh: body.mesh() }));
  const cut = (x: number, y: number) => depth(mesh, x, y) > 0.3;
  const columns = Array.from({ length: 121 }, (_, step) => -3 + step * 0.05);
  const rows = Array.from({ length: 41 }, (_, step) => -2.5 + step * 0.125);
  const filled = columns.map((x) => rows.filter((y) => cut(x, y)).length);
  const stem = filled.indexOf(Math.max(...filled));
  const inked = filled.flatMap((amount, index) => (amount > 0 ? [index] : []));
  expect(stem - Math.min(...inked)).toBeLessThan(Math.max(...inked) - stem);
});
