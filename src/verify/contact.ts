import { cornerOf, facets, SLIVER, vectorAt } from "../geometry/facets.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { clip, type Region } from "./region.ts";
import { cross, dot, minus, plus } from "./vector.ts";

/** A plane through a point; the normal, of length 1, points out of the material. */
export interface Plane {
  readonly point: Vec3;
  readonly normal: Vec3;
}

/** How far a corner may lie off the plane, in mm. */
const OFF_PLANE = 2e-3;
const SAME_WAY = Math.cos((0.5 * Math.PI) / 180);

/**
 * Returns the area in mm2 of the mesh's surface that lies in a plane and faces the same way (within 0.002 mm and half a
 * degree), and inside the region if one is given. A facet that reaches out of the region counts with the part inside.
 */
export function contactArea(mesh: Mesh, plane: Plane, region: Region = []): number {
  const { normals, areas } = facets(mesh);
  let sum = 0;
  areas.forEach((area, facet) => {
    if (area < SLIVER || dot(vectorAt(normals, facet), plane.normal) < SAME_WAY) return;
    const corners = [0, 1, 2].map((k) => cornerOf(mesh, facet, k));
    const off = corners.map((corner) => Math.abs(dot(minus(corner, plane.point), plane.normal)));
    if (Math.max(...off) > OFF_PLANE) return;
    sum += polygonArea(clip(corners, region));
  });
  return sum;
}

function polygonArea(corners: readonly Vec3[]): number {
  const origin = corners[0] ?? [0, 0, 0];
  const twice = corners.reduce<Vec3>(
    (sum, corner, index) => {
      const following = corners[(index + 1) % corners.length] as Vec3;
      return plus(sum, cross(minus(corner, origin), minus(following, origin)));
    },
    [0, 0, 0],
  );
  return Math.hypot(...twice) / 2;
}
