import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { facetTree } from "./facet-tree.ts";

export interface Hit {
  readonly facet: number;
  /** mm along the ray, whose direction has length 1. */
  readonly distance: number;
}

/** Returns the nearest facet that the ray meets farther than `from` and nearer than `to`, either side of the facet. */
export type NearestHit = (origin: Vec3, direction: Vec3, from: number, to: number) => Hit | undefined;

const INSIDE = -1e-9;

/**
 * Returns a search for the nearest facet along a ray, through a tree of boxes over all facets. Made for short rays: a
 * box is looked into where it meets the box round the ray, which of a ray along an axis is the ray itself.
 */
export function rayTree(mesh: Mesh): NearestHit {
  const { bounds, first, size, order, shapes, depth } = facetTree(mesh);
  // Nodes still to be searched.
  const stack = new Int32Array(depth + 2);
  return (origin, direction, from, to) => {
    const ox = origin[0];
    const oy = origin[1];
    const oz = origin[2];
    const length = Math.min(to, farthest(bounds, ox, oy, oz));
    const ex = ox + direction[0] * length;
    const ey = oy + direction[1] * length;
    const ez = oz + direction[2] * length;
    const lowX = Math.min(ox, ex);
    const lowY = Math.min(oy, ey);
    const lowZ = Math.min(oz, ez);
    const highX = Math.max(ox, ex);
    const highY = Math.max(oy, ey);
    const highZ = Math.max(oz, ez);
    let facet = -1;
    let nearest = to;
    let top = 1;
    stack[0] = 0;
    while (top > 0) {
      const node = stack[--top] as number;
      const at = node * 6;
      if ((bounds[at] as number) > highX || (bounds[at + 3] as number) < lowX) continue;
      if ((bounds[at + 1] as number) > highY || (bounds[at + 4] as number) < lowY) continue;
      if ((bounds[at + 2] as number) > highZ || (bounds[at + 5] as number) < lowZ) continue;
      const place = first[node] as number;
      const end = place + (size[node] as number);
      if (place === end) {
        stack[top++] = place + 1;
        stack[top++] = place;
      }
      for (let index = place; index < end; index++) {
        const distance = crossing(shapes, index * 9, origin, direction);
        if (distance <= from || distance >= nearest) continue;
        nearest = distance;
        facet = order[index] as number;
      }
    }
    return facet < 0 ? undefined : { facet, distance: nearest };
  };
}

/** No point of the first box is farther than this from the point, mm. */
function farthest(bounds: Float64Array, x: number, y: number, z: number): number {
  const alongX = Math.max(x - (bounds[0] as number), (bounds[3] as number) - x);
  const alongY = Math.max(y - (bounds[1] as number), (bounds[4] as number) - y);
  const alongZ = Math.max(z - (bounds[2] as number), (bounds[5] as number) - z);
  return alongX + alongY + alongZ;
}

/** Distance along the ray to the facet, Infinity when it misses. Source: Moeller and Trumbore 1997, from memory. */
function crossing(shapes: Float64Array, at: number, origin: Vec3, direction: Vec3): number {
  const dx = direction[0];
  const dy = direction[1];
  const dz = direction[2];
  const ux = shapes[at + 3] as number;
  const uy = shapes[at + 4] as number;
  const uz = shapes[at + 5] as number;
  const vx = shapes[at + 6] as number;
  const vy = shapes[at + 7] as number;
  const vz = shapes[at + 8] as number;
  const px = dy * vz - dz * vy;
  const py = dz * vx - dx * vz;
  const pz = dx * vy - dy * vx;
  const determinant = ux * px + uy * py + uz * pz;
  if (Math.abs(determinant) < 1e-14) return Infinity;
  const sx = origin[0] - (shapes[at] as number);
  const sy = origin[1] - (shapes[at + 1] as number);
  const sz = origin[2] - (shapes[at + 2] as number);
  const u = (sx * px + sy * py + sz * pz) / determinant;
  if (u < INSIDE || u > 1 - INSIDE) return Infinity;
  const qx = sy * uz - sz * uy;
  const qy = sz * ux - sx * uz;
  const qz = sx * uy - sy * ux;
  const v = (dx * qx + dy * qy + dz * qz) / determinant;
  if (v < INSIDE || u + v > 1 - INSIDE) return Infinity;
  return (vx * qx + vy * qy + vz * qz) / determinant;
}
