import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { fitsBed } from "../../src/verify/bed.ts";
import { meshEdges, next } from "../../src/verify/mesh-edges.ts";
import { soundness } from "../../src/verify/soundness.ts";
import { brokenFacets, weld } from "../../src/verify/weld.ts";
import { Body, bearingBlock, between, block, meshOf, rod } from "./bodies.ts";

const cube = meshOf(block(10, 10, 10));

function withTriangles(mesh: Mesh, triangles: readonly number[]): Mesh {
  return { positions: mesh.positions, triangles: Uint32Array.from(triangles) };
}

/** Every facet with three corners of its own, as a file of loose triangles has them. */
function loose(mesh: Mesh): Mesh {
  const positions = [...mesh.triangles].flatMap((corner) => [...mesh.positions.slice(corner * 3, corner * 3 + 3)]);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(mesh.triangles, (_, index) => index) };
}

describe("a sound mesh", () => {
  it("is closed and oriented, and measures what the body measures", () => {
    const sound = soundness(cube);
    expect(sound).toMatchObject({ facets: 12, closed: true, oriented: true, shells: 1, pieces: 1, voids: 0 });
    expect(sound).toMatchObject({ openEdges: 0, flippedEdges: 0, crowdedEdges: 0, pinchedCorners: 0, euler: 2 });
    expect(sound.genus).toBe(0);
    expect(sound.volume).toBeCloseTo(1000, 9);
    expect(sound.area).toBeCloseTo(600, 9);
    expect(sound.box).toEqual({ min: [0, 0, 0], max: [10, 10, 10] });
  });

  it("agrees with the kernel about genus, volume and area", () => {
    const body = bearingBlock(() => 32);
    const sound = soundness(meshOf(body));
    expect(sound.closed && sound.oriented).toBe(true);
    expect(sound.genus).toBe(body.genus());
    expect(sound.genus).toBe(5);
    expect(sound.volume).toBeCloseTo(body.volume(), 1);
    expect(sound.area).toBeCloseTo(body.surfaceArea(), 1);
  });

  it("is the same when every facet brings its own corners", () => {
    const mesh = meshOf(bearingBlock(() => 24));
    expect(soundness(loose(mesh))).toEqual(soundness(mesh));
  });

  it("keeps its volume wherever it stands and however it is turned", () => {
    const angle = between(-180, 180);
    const shift = between(-200, 200);
    fc.assert(
      fc.property(angle, angle, shift, shift, (a, b, x, z) => {
        const mesh = meshOf(Body.cube([20, 10, 5]).rotate([a, b, 0]).translate([x, 0, z]));
        const sound = soundness(mesh);
        expect(sound.closed && sound.oriented).toBe(true);
        expect(Math.abs(sound.volume - 1000)).toBeLessThan(0.05);
        expect(sound.box.max[2] - sound.box.min[2]).toBeLessThanOrEqual(Math.hypot(20, 10, 5) + 1e-3);
      }),
    );
  });
});

describe("a faulty mesh", () => {
  it("is open when a facet is missing", () => {
    const sound = soundness(withTriangles(cube, [...cube.triangles].slice(3)));
    expect(sound).toMatchObject({ closed: false, openEdges: 3, flippedEdges: 0, crowdedEdges: 0 });
    expect(sound.genus).toBeNaN();
  });

  it("is not oriented when a facet is turned inside out", () => {
    const [a = 0, b = 0, c = 0, ...rest] = cube.triangles;
    const sound = soundness(withTriangles(cube, [a, c, b, ...rest]));
    expect(sound).toMatchObject({ closed: true, oriented: false, flippedEdges: 3, openEdges: 0 });
  });

  it("has crowded edges when a facet is there twice", () => {
    const sound = soundness(withTriangles(cube, [...cube.triangles, ...cube.triangles.slice(0, 3)]));
    expect(sound).toMatchObject({ closed: false, crowdedEdges: 3, openEdges: 0 });
  });

  it("has crowded edges where two bodies share one", () => {
    const other = meshOf(block(10, 10, 10, [10, 10, 0]));
    const both = merge(cube, other);
    expect(soundness(both)).toMatchObject({ closed: false, crowdedEdges: 1, openEdges: 0 });
  });

  it("is pinched where two bodies meet in a corner", () => {
    const sound = soundness(merge(cube, meshOf(block(10, 10, 10, [10, 10, 10]))));
    expect(sound).toMatchObject({ closed: true, oriented: true, pinchedCorners: 1, shells: 2, euler: 4, genus: 0 });
  });

  it("is inside out when every facet is", () => {
    const turned = [...cube.triangles].map((_, index, all) => all[index - (index % 3) + 2 - (index % 3)] as number);
    const sound = soundness(withTriangles(cube, turned));
    expect(sound).toMatchObject({ closed: true, oriented: true, pieces: 0, voids: 1 });
    expect(sound.volume).toBeCloseTo(-1000, 9);
  });

  it("counts facets that lose a corner in single precision, and leaves the rest closed", () => {
    // One facet gets a corner of its own 1e-8 mm beside the shared one, and a needle fills the crack.
    const far = [...cube.triangles].findIndex((corner) => cube.positions[corner * 3] === 10);
    const shared = cube.triangles[far] as number;
    const [x = 0, y = 0, z = 0] = cube.positions.slice(shared * 3, shared * 3 + 3);
    const own = cube.positions.length / 3;
    const triangles = [...cube.triangles].map((corner, index) => (index === far ? own : corner));
    const other = triangles.findIndex((corner, index) => index !== far && corner !== shared && corner !== own);
    const mesh = {
      positions: Float64Array.of(...cube.positions, x + 1e-8, y, z),
      triangles: Uint32Array.of(...triangles, shared, own, triangles[other] as number),
    };
    expect(soundness(mesh)).toMatchObject({ collapsed: 1, closed: true, oriented: true, facets: 13, euler: 2 });
  });

  it("counts slivers, which close the surface all the same", () => {
    const positions = Float64Array.of(0, 0, 0, 10, 0, 0, 0, 10, 0, 0, 0, 10, 5, 1e-8, 0);
    const corner = [0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3];
    expect(soundness({ positions, triangles: Uint32Array.from(corner) })).toMatchObject({ closed: true, slivers: 0 });
    const split = Uint32Array.of(0, 2, 4, 4, 2, 1, 0, 4, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3);
    expect(soundness({ positions, triangles: split })).toMatchObject({ closed: true, oriented: true, slivers: 1 });
  });
});

describe("shells", () => {
  it("counts two bodies that do not touch", () => {
    const sound = soundness(meshOf(Body.compose([block(10, 10, 10), block(5, 5, 5, [30, 0, 0])])));
    expect(sound).toMatchObject({ shells: 2, pieces: 2, voids: 0, euler: 4, genus: 0 });
    expect(sound.volume).toBeCloseTo(1125, 9);
  });

  it("tells a hollow inside a body from a second body", () => {
    const sound = soundness(meshOf(block(20, 20, 20).subtract(rod(4, 8, [10, 10, 6]))));
    expect(sound).toMatchObject({ closed: true, shells: 2, pieces: 1, voids: 1, genus: 0 });
  });
});

describe("the edges of a mesh", () => {
  it("pair half-edges that run between the same corners in opposite senses", () => {
    const { mesh, twin, count } = meshEdges(meshOf(bearingBlock(() => 20)));
    expect(count * 2).toBe(mesh.triangles.length);
    twin.forEach((other, half) => {
      expect(twin[other]).toBe(half);
      expect(mesh.triangles[other]).toBe(mesh.triangles[next(half)]);
      expect(mesh.triangles[next(other)]).toBe(mesh.triangles[half]);
    });
  });
});

describe("broken facets", () => {
  it("are counted and refused", () => {
    const [nowhere, endless] = [Uint32Array.of(0, 1, 99), Float64Array.of(0, 0, 0, 1, Number.NaN, 0, 0, 1, 0)];
    expect(brokenFacets({ positions: cube.positions, triangles: nowhere })).toBe(1);
    expect(brokenFacets({ positions: endless, triangles: Uint32Array.of(0, 1, 2) })).toBe(1);
    expect(brokenFacets(cube)).toBe(0);
    expect(() => weld({ positions: cube.positions, triangles: nowhere })).toThrow(RangeError);
  });
});

describe("a bed", () => {
  const box = (x: number, y: number, z: number) => ({ min: [1, 1, 0] as const, max: [1 + x, 1 + y, z] as const });
  it("takes a part as it lies or turned by 90 degrees, and no higher than it is", () => {
    const bed = { x: 200, y: 100, z: 50 };
    expect(fitsBed(box(200, 100, 50), bed)).toBe(true);
    expect(fitsBed(box(100, 200, 50), bed)).toBe(true);
    expect(fitsBed(box(101, 101, 50), bed)).toBe(false);
    expect(fitsBed(box(201, 10, 10), bed)).toBe(false);
    expect(fitsBed(box(10, 10, 51), bed)).toBe(false);
  });
});

function merge(one: Mesh, other: Mesh): Mesh {
  const shift = one.positions.length / 3;
  return {
    positions: Float64Array.of(...one.positions, ...other.positions),
    triangles: Uint32Array.of(...one.triangles, ...other.triangles.map((corner) => corner + shift)),
  };
}
