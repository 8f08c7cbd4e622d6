import type { Mesh, Vec3 } from "../../../src/geometry/mesh.ts";

/** Returns how far a ray goes until it meets a facet, from the triangles alone; Infinity when it meets none. mm. */
export function firstHit({ positions, triangles }: Mesh, from: Vec3, towards: Vec3): number {
  const corner = (index: number): Vec3 => {
    const at = (triangles[index] ?? 0) * 3;
    return [positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0];
  };
  let nearest = Number.POSITIVE_INFINITY;
  for (let facet = 0; facet < triangles.length; facet += 3) {
    nearest = Math.min(nearest, hit(corner(facet), corner(facet + 1), corner(facet + 2), from, towards));
  }
  return nearest;
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Solves from + s * towards = a + u (b - a) + v (c - a). */
function hit(a: Vec3, b: Vec3, c: Vec3, from: Vec3, towards: Vec3): number {
  const [one, other] = [minus(b, a), minus(c, a)];
  const across = cross(towards, other);
  const volume = dot(one, across);
  if (Math.abs(volume) < 1e-12) return Number.POSITIVE_INFINITY;
  const start = minus(from, a);
  const u = dot(start, across) / volume;
  const turned = cross(start, one);
  const v = dot(towards, turned) / volume;
  const distance = dot(other, turned) / volume;
  const inside = u >= -1e-9 && v >= -1e-9 && u + v <= 1 + 1e-9;
  return inside && distance > 1e-6 ? distance : Number.POSITIVE_INFINITY;
}
