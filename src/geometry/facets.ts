import { onceForEach } from "../core/once-for-each.ts";
import type { Mesh, Vec3 } from "./mesh.ts";

/** The unit normal (x, y, z) and the area in mm2 of each facet; a facet without area has the normal 0, 0, 0. */
export interface Facets {
  readonly normals: Float64Array;
  readonly areas: Float64Array;
}

/** A facet smaller than this, in mm2, has no direction worth trusting. Source: design rule. */
export const SLIVER = 1e-6;

/** Returns the normal and the area of every facet of a mesh. */
export const facets = onceForEach(({ positions: p, triangles }: Mesh): Facets => {
  const count = triangles.length / 3;
  const normals = new Float64Array(count * 3);
  const areas = new Float64Array(count);
  for (let facet = 0; facet < count; facet++) {
    const a = (triangles[facet * 3] as number) * 3;
    const b = (triangles[facet * 3 + 1] as number) * 3;
    const c = (triangles[facet * 3 + 2] as number) * 3;
    const ux = (p[b] as number) - (p[a] as number);
    const uy = (p[b + 1] as number) - (p[a + 1] as number);
    const uz = (p[b + 2] as number) - (p[a + 2] as number);
    const vx = (p[c] as number) - (p[a] as number);
    const vy = (p[c + 1] as number) - (p[a + 1] as number);
    const vz = (p[c + 2] as number) - (p[a + 2] as number);
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    areas[facet] = length / 2;
    if (length === 0) continue;
    normals[facet * 3] = nx / length;
    normals[facet * 3 + 1] = ny / length;
    normals[facet * 3 + 2] = nz / length;
  }
  return { normals, areas };
});

/** Returns the place of corner k (0 to 2) of a facet. */
export function cornerOf({ positions, triangles }: Mesh, facet: number, k: number): Vec3 {
  return vectorAt(positions, triangles[facet * 3 + k] as number);
}

/** Returns the vector number `index` of an array that holds x, y, z of each. */
export function vectorAt(array: Float64Array, index: number): Vec3 {
  return [array[index * 3] as number, array[index * 3 + 1] as number, array[index * 3 + 2] as number];
}
