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

/** Returns a search for the nearest facet along a ray, through a tree of boxes over all facets. */
export function rayTree(mesh: Mesh): NearestHit {
  const tree = facetTree(mesh);
  const stack = new Int32Array(tree.depth + 2);
  return (origin, direction, from, to) => {
    const inverse = direction.map((part) => 1 / (part === 0 ? 1e-300 : part)) as unknown as Vec3;
    let facet = -1;
    let nearest = to;
    let top = 0;
    stack[top++] = 0;
    while (top > 0) {
      const node = stack[--top] as number;
      if (entry(tree.bounds, node, origin, inverse, nearest) >= nearest) continue;
      const first = tree.first[node] as number;
      const size = tree.size[node] as number;
      if (size === 0) {
        const left = entry(tree.bounds, first, origin, inverse, nearest);
        const right = entry(tree.bounds, first + 1, origin, inverse, nearest);
        // The nearer child goes on last and is searched first.
        if (Math.max(left, right) < nearest) stack[top++] = left < right ? first + 1 : first;
        if (Math.min(left, right) < nearest) stack[top++] = left < right ? first : first + 1;
      }
      for (let place = first; place < first + size; place++) {
        const distance = crossing(tree.shapes, place * 9, origin, direction);
        if (distance <= from || distance >= nearest) continue;
        nearest = distance;
        facet = tree.order[place] as number;
      }
    }
    return facet < 0 ? undefined : { facet, distance: nearest };
  };
}

/** How far along the ray the box begins; Infinity when the ray misses it or it begins beyond `to`. */
function entry(bounds: Float64Array, node: number, origin: Vec3, inverse: Vec3, to: number): number {
  let near = 0;
  let far = to;
  for (let axis = 0; axis < 3; axis++) {
    const from = origin[axis as 0] as number;
    const one = ((bounds[node * 6 + axis] as number) - from) * (inverse[axis as 0] as number);
    const other = ((bounds[node * 6 + 3 + axis] as number) - from) * (inverse[axis as 0] as number);
    near = Math.max(near, Math.min(one, other));
    far = Math.min(far, Math.max(one, other));
  }
  return near <= far ? near : Infinity;
}

/** Distance along the ray to the facet, Infinity when it misses. Source: Moeller and Trumbore 1997, from memory. */
function crossing(shapes: Float64Array, at: number, [ox, oy, oz]: Vec3, [dx, dy, dz]: Vec3): number {
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
  const sx = ox - (shapes[at] as number);
  const sy = oy - (shapes[at + 1] as number);
  const sz = oz - (shapes[at + 2] as number);
  const u = (sx * px + sy * py + sz * pz) / determinant;
  if (u < INSIDE || u > 1 - INSIDE) return Infinity;
  const qx = sy * uz - sz * uy;
  const qy = sz * ux - sx * uz;
  const qz = sx * uy - sy * ux;
  const v = (dx * qx + dy * qy + dz * qz) / determinant;
  if (v < INSIDE || u + v > 1 - INSIDE) return Infinity;
  return (vx * qx + vy * qy + vz * qz) / determinant;
}
