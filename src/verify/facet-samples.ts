import { cornerOf } from "../geometry/facets.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { minus } from "./vector.ts";

/** Steps of the two-dimensional sequence that fills a square evenly: 1/g and 1/g^2 with g^3 = g + 1. */
const STEP_U = 0.7548776662466927;
const STEP_V = 0.5698402909980532;
/** Most rows of the lattice over one facet, and how far it stays off the facet's edges, in rows. */
const ROWS = 40;
const INSET = 0.05;

/**
 * Returns points spread over a facet, always the same: its middle first, then points of an even sequence, as many as
 * `density` per mm2 of its area asks for and at least one.
 */
export function facetSamples(mesh: Mesh, facet: number, area: number, density: number): Vec3[] {
  const wanted = Math.max(1, Math.round(area * density));
  const points = [pointOn(mesh, facet, 1 / 3, 1 / 3)];
  for (let index = 1; index < wanted; index++) {
    const u = (0.5 + index * STEP_U) % 1;
    const v = (0.5 + index * STEP_V) % 1;
    // The far half of the square is folded over onto the triangle.
    points.push(u + v > 1 ? pointOn(mesh, facet, 1 - u, 1 - v) : pointOn(mesh, facet, u, v));
  }
  return points;
}

/** Returns a triangular lattice over a facet, about 1 mm wide, that comes close to its edges and corners. */
export function facetLattice(mesh: Mesh, facet: number): Vec3[] {
  const sides = [0, 1, 2].map((k) =>
    Math.hypot(...minus(cornerOf(mesh, facet, k), cornerOf(mesh, facet, (k + 1) % 3))),
  );
  const rows = Math.min(ROWS, Math.max(2, Math.ceil(Math.max(...sides))));
  const side = rows + 3 * INSET;
  const points: Vec3[] = [];
  for (let i = 0; i <= rows; i++) {
    for (let j = 0; i + j <= rows; j++) points.push(pointOn(mesh, facet, (i + INSET) / side, (j + INSET) / side));
  }
  return points;
}

function pointOn({ positions: p, triangles }: Mesh, facet: number, u: number, v: number): Vec3 {
  const a = (triangles[facet * 3] as number) * 3;
  const b = (triangles[facet * 3 + 1] as number) * 3;
  const c = (triangles[facet * 3 + 2] as number) * 3;
  const w = 1 - u - v;
  return [
    (p[a] as number) * w + (p[b] as number) * u + (p[c] as number) * v,
    (p[a + 1] as number) * w + (p[b + 1] as number) * u + (p[c + 1] as number) * v,
    (p[a + 2] as number) * w + (p[b + 2] as number) * u + (p[c + 2] as number) * v,
  ];
}
