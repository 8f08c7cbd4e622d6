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
  const { bounds, first, size } = tree;
  // Nodes still to be searched, and how far along the ray each begins.
  const stack = new Int32Array(tree.depth + 2);
  const begins = new Float64Array(tree.depth + 2);
  return (origin, direction, from, to) => {
    const ox = origin[0];
    const oy = origin[1];
    const oz = origin[2];
    const ix = reciprocal(direction[0]);
    const iy = reciprocal(direction[1]);
    const iz = reciprocal(direction[2]);
    let facet = -1;
    let nearest = to;
    let top = 1;
    stack[0] = 0;
    begins[0] = 0;
    while (top > 0) {
      top--;
      if ((begins[top] as number) >= nearest) continue;
      const node = stack[top] as number;
      const place = first[node] as number;
      const end = place + (size[node] as number);
      if (place === end) {
        const left = entry(bounds, place * 6, ox, oy, oz, ix, iy, iz, nearest);
        const right = entry(bounds, place * 6 + 6, ox, oy, oz, ix, iy, iz, nearest);
        const swap = left < right ? 1 : 0;
        // The nearer child goes on last and is searched first.
        stack[top] = place + swap;
        begins[top] = swap === 1 ? right : left;
        stack[top + 1] = place + 1 - swap;
        begins[top + 1] = swap === 1 ? left : right;
        top += 2;
      }
      for (let index = place; index < end; index++) {
        const distance = crossing(tree.shapes, index * 9, origin, direction);
        if (distance <= from || distance >= nearest) continue;
        nearest = distance;
        facet = tree.order[index] as number;
      }
    }
    return facet < 0 ? undefined : { facet, distance: nearest };
  };
}

/** A direction along a face of a box must not turn 0 x Infinity into NaN. */
function reciprocal(part: number): number {
  return 1 / (part === 0 ? 1e-300 : part);
}

/**
 * How far along the ray from o the box begins; Infinity when the ray misses it or it begins beyond `to`. `ix`, `iy`,
 * `iz` are the reciprocals of the ray's direction.
 */
function entry(
  bounds: Float64Array,
  at: number,
  ox: number,
  oy: number,
  oz: number,
  ix: number,
  iy: number,
  iz: number,
  to: number,
): number {
  const x0 = ((bounds[at] as number) - ox) * ix;
  const x1 = ((bounds[at + 3] as number) - ox) * ix;
  let near = Math.min(x0, x1);
  let far = Math.max(x0, x1);
  if (far < 0 || near >= to) return Infinity;
  const y0 = ((bounds[at + 1] as number) - oy) * iy;
  const y1 = ((bounds[at + 4] as number) - oy) * iy;
  near = Math.max(near, Math.min(y0, y1));
  far = Math.min(far, Math.max(y0, y1));
  if (near > far) return Infinity;
  const z0 = ((bounds[at + 2] as number) - oz) * iz;
  const z1 = ((bounds[at + 5] as number) - oz) * iz;
  near = Math.max(near, Math.min(z0, z1));
  far = Math.min(far, Math.max(z0, z1));
  return near <= far && far >= 0 && near < to ? Math.max(near, 0) : Infinity;
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
