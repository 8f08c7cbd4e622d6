import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cornerOf } from "../../src/geometry/facets.ts";
import type { Mesh, Vec3 } from "../../src/geometry/mesh.ts";
import { rayTree } from "../../src/verify/ray-tree.ts";
import { cross, dot, minus, plus, scaled } from "../../src/verify/vector.ts";
import { bearingBlock, between, block, meshOf } from "./bodies.ts";

/**
 * Tries every facet: where the ray meets its plane, and on which side of each edge that is. A facet counts as larger
 * by `margin`, a part of its own size, or as smaller when that is below zero.
 */
function bruteForce(mesh: Mesh, origin: Vec3, direction: Vec3, from: number, margin: number): number {
  let nearest = Infinity;
  for (let facet = 0; facet < mesh.triangles.length / 3; facet++) {
    const corners = [0, 1, 2].map((k) => cornerOf(mesh, facet, k)) as [Vec3, Vec3, Vec3];
    const normal = cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
    const slope = dot(normal, direction);
    if (Math.abs(slope) < 1e-12) continue;
    const distance = dot(normal, minus(corners[0], origin)) / slope;
    if (distance <= from || distance >= nearest) continue;
    const point = plus(origin, scaled(direction, distance));
    const inside = corners.every((corner, k) => {
      const edge = minus(corners[(k + 1) % 3] as Vec3, corner);
      return dot(cross(edge, minus(point, corner)), normal) >= -margin * dot(normal, normal);
    });
    if (inside) nearest = distance;
  }
  return nearest;
}

describe("the nearest facet along a ray", () => {
  const mesh = meshOf(bearingBlock(() => 28));
  const nearest = rayTree(mesh);

  it("is the one that trying every facet finds", () => {
    const place = fc.tuple(between(-60, 60), between(-50, 50), between(-20, 45));
    const target = fc.tuple(between(-40, 40), between(-30, 30), between(0, 24));
    let hits = 0;
    fc.assert(
      fc.property(place, target, (origin, towards) => {
        const way = minus(towards, origin);
        const direction = scaled(way, 1 / Math.hypot(...way));
        const found = nearest(origin, direction, 1e-6, Infinity)?.distance ?? Infinity;
        // A ray along an edge may hit or miss the facets beside it; anywhere else both answers are the same.
        const [large, small] = [1e-6, -1e-6].map((margin) => bruteForce(mesh, origin, direction, 1e-6, margin));
        if (large === small && found < Infinity) hits++;
        expect(found).toBeGreaterThanOrEqual((large as number) - 1e-6);
        expect(found).toBeLessThanOrEqual((small as number) + 1e-6);
      }),
      { numRuns: 1000, seed: 7 },
    );
    expect(hits).toBeGreaterThan(500);
  });

  it("is found along the axes from points in the planes of other facets", () => {
    const cube = rayTree(meshOf(block(10, 10, 10)));
    expect(cube([2, 3, 0], [0, 0, 1], 1e-6, Infinity)?.distance).toBeCloseTo(10, 12);
    expect(cube([0, 3, 4], [1, 0, 0], 1e-6, Infinity)?.distance).toBeCloseTo(10, 12);
    expect(cube([2, 10, 4], [0, -1, 0], 1e-6, Infinity)?.distance).toBeCloseTo(10, 12);
    expect(cube([-5, 10, 4], [1, 0, 0], 1e-6, Infinity)?.distance).toBeCloseTo(5, 12);
  });

  it("is none beyond the farthest or before the nearest distance asked for", () => {
    const cube = rayTree(meshOf(block(10, 10, 10)));
    expect(cube([5, 4, 5], [0, 0, 1], 0, 4.9)).toBeUndefined();
    expect(cube([5, 4, 5], [0, 0, 1], 0, 5.1)?.distance).toBeCloseTo(5, 12);
    expect(cube([5, 4, 5], [0, 0, 1], 5.1, Infinity)).toBeUndefined();
    expect(cube([5, 4, 15], [0, 0, 1], 0, Infinity)).toBeUndefined();
  });

  it("is none in an empty mesh", () => {
    const empty = rayTree({ positions: new Float64Array(0), triangles: new Uint32Array(0) });
    expect(empty([0, 0, 0], [0, 0, 1], 0, Infinity)).toBeUndefined();
  });
});
