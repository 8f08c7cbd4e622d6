import { cornerOf, type Facets, facets, SLIVER } from "../geometry/facets.ts";
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
 * `known` are the mesh's facets, where they have been worked out.
 */
export function contactArea(mesh: Mesh, plane: Plane, region: Region = [], known: Facets = facets(mesh)): number {
  const inPlane = planeTest(mesh, plane);
  let sum = 0;
  for (const facet of facingFacets(known, plane.normal)) {
    if (!inPlane(facet)) continue;
    const corners = [0, 1, 2].map((k) => cornerOf(mesh, facet, k));
    const inside = clip(corners, region);
    sum += inside === corners ? (known.areas[facet] as number) : polygonArea(inside);
  }
  return sum;
}

/** Returns the facets that face this way. A loop of its own: it alone runs often enough to be worth optimising. */
function facingFacets({ normals, areas }: Facets, [nx, ny, nz]: Vec3): number[] {
  const found: number[] = [];
  for (let facet = 0; facet < areas.length; facet++) {
    const at = facet * 3;
    const facing = (normals[at] as number) * nx + (normals[at + 1] as number) * ny + (normals[at + 2] as number) * nz;
    if (facing >= SAME_WAY && (areas[facet] as number) >= SLIVER) found.push(facet);
  }
  return found;
}

/** Returns whether all corners of a facet lie in the plane. */
function planeTest({ positions, triangles }: Mesh, { point, normal }: Plane): (facet: number) => boolean {
  const [nx, ny, nz] = normal;
  const offset = dot(point, normal);
  return (facet) => {
    for (let corner = facet * 3; corner < facet * 3 + 3; corner++) {
      const at = (triangles[corner] as number) * 3;
      const x = positions[at] as number;
      const y = positions[at + 1] as number;
      const z = positions[at + 2] as number;
      if (Math.abs(x * nx + y * ny + z * nz - offset) > OFF_PLANE) return false;
    }
    return true;
  };
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
