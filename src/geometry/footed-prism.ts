import type { Mesh, Vec2 } from "./mesh.ts";

/** Three rings of corners per contour: the inset bed edge, the full outline above it, and the top. */
const LEVELS = 3;

/**
 * Returns a prism whose lowest edge is inset by `foot` at 45 degrees: the chamfer that keeps the squashed first layer
 * of a print inside its outline. Every corner moves along its mitre, so the corner count stays the same.
 *
 * `contours` in mm, outlines counter-clockwise, holes clockwise; `triangulate` caps them. Holds while `foot` is
 * smaller than the smallest convex corner radius or half the shortest edge.
 */
export function footedPrism(
  contours: readonly (readonly Vec2[])[],
  z0: number,
  z1: number,
  foot: number,
  triangulate: (contours: [number, number][][]) => readonly (readonly number[])[],
): Mesh {
  const bottom = contours.map((contour) => inset(contour, foot));
  const corners = contours.reduce((sum, contour) => sum + contour.length, 0);
  const positions = new Float64Array(corners * LEVELS * 3);
  const levels = [
    { rings: bottom, z: z0 },
    { rings: contours, z: z0 + foot },
    { rings: contours, z: z1 },
  ];
  levels.forEach(({ rings, z }, level) => {
    rings.flat().forEach(([x, y], corner) => {
      positions.set([x, y, z], (level * corners + corner) * 3);
    });
  });
  const triangles = walls(contours, corners);
  for (const [a = 0, b = 0, c = 0] of triangulate(bottom)) triangles.push(a, c, b);
  const top = (LEVELS - 1) * corners;
  for (const [a = 0, b = 0, c = 0] of triangulate(contours.map(open))) triangles.push(top + a, top + b, top + c);
  return { positions, triangles: Uint32Array.from(triangles) };
}

const open = (contour: readonly Vec2[]) => contour.map(([x, y]): [number, number] => [x, y]);

function walls(contours: readonly (readonly Vec2[])[], corners: number): number[] {
  const triangles: number[] = [];
  let first = 0;
  for (const contour of contours) {
    for (let level = 0; level < LEVELS - 1; level++) {
      contour.forEach((_, index) => {
        const here = level * corners + first + index;
        const next = level * corners + first + ((index + 1) % contour.length);
        triangles.push(here, next, next + corners, here, next + corners, here + corners);
      });
    }
    first += contour.length;
  }
  return triangles;
}

/** Moves every corner inwards (a hole's outwards) so that each edge shifts by `by`. */
function inset(contour: readonly Vec2[], by: number): [number, number][] {
  return contour.map((corner, index) => {
    const before = contour[(index + contour.length - 1) % contour.length] ?? corner;
    const after = contour[(index + 1) % contour.length] ?? corner;
    const incoming = inward(before, corner);
    const outgoing = inward(corner, after);
    const scale = by / (1 + incoming[0] * outgoing[0] + incoming[1] * outgoing[1]);
    return [corner[0] + (incoming[0] + outgoing[0]) * scale, corner[1] + (incoming[1] + outgoing[1]) * scale];
  });
}

function inward(from: Vec2, to: Vec2): Vec2 {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
}
