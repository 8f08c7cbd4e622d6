import type { Mesh } from "../geometry/mesh.ts";
import { numbering } from "../geometry/numbering.ts";
import { weld } from "./weld.ts";

/**
 * How the facets of a mesh meet. Half-edge 3 f + k runs along facet f from its corner k to the next one; the two
 * half-edges of neighbours that agree run along the same edge in opposite senses.
 */
export interface MeshEdges {
  /** The welded mesh: all numbers below speak of it. */
  readonly mesh: Mesh;
  /** How many edges there are, each counted once. */
  readonly count: number;
  /** The edge of each half-edge; -1 in a collapsed facet, which has lost a corner to rounding and is left out. */
  readonly edgeOf: Int32Array;
  /** The opposite half-edge where exactly two facets meet and agree; else -1. */
  readonly twin: Int32Array;
  /** For each edge, the facets that run along it from the lower corner number to the higher, and the other way. */
  readonly upward: Uint32Array;
  readonly downward: Uint32Array;
}

/** Returns the next half-edge round the same facet. */
export function next(half: number): number {
  return half % 3 === 2 ? half - 2 : half + 1;
}

/** Returns whether two corners of this facet are one and the same. */
export function isCollapsed(triangles: Uint32Array, facet: number): boolean {
  const a = triangles[facet * 3];
  const b = triangles[facet * 3 + 1];
  const c = triangles[facet * 3 + 2];
  return a === b || b === c || c === a;
}

/** Returns how the facets of the mesh meet, after welding. Throws a RangeError when a facet is broken. */
export function meshEdges(source: Mesh): MeshEdges {
  const mesh = weld(source);
  const { triangles } = mesh;
  const halves = triangles.length;
  const number = numbering(halves);
  const edgeOf = new Int32Array(halves).fill(-1);
  const upward = new Uint32Array(halves);
  const downward = new Uint32Array(halves);
  let count = 0;
  for (let half = 0; half < halves; half++) {
    if (isCollapsed(triangles, Math.floor(half / 3))) continue;
    const from = triangles[half] as number;
    const to = triangles[next(half)] as number;
    const edge = from < to ? number(from, to, 0) : number(to, from, 0);
    edgeOf[half] = edge;
    if (from < to) upward[edge] = (upward[edge] as number) + 1;
    else downward[edge] = (downward[edge] as number) + 1;
    count = Math.max(count, edge + 1);
  }
  const twin = pair(edgeOf, upward, downward);
  return { mesh, count, edgeOf, twin, upward: upward.slice(0, count), downward: downward.slice(0, count) };
}

function pair(edgeOf: Int32Array, upward: Uint32Array, downward: Uint32Array): Int32Array {
  const twin = new Int32Array(edgeOf.length).fill(-1);
  const waiting = new Int32Array(edgeOf.length).fill(-1);
  for (let half = 0; half < edgeOf.length; half++) {
    const edge = edgeOf[half] as number;
    if (edge < 0 || upward[edge] !== 1 || downward[edge] !== 1) continue;
    const other = waiting[edge] as number;
    waiting[edge] = half;
    if (other < 0) continue;
    twin[half] = other;
    twin[other] = half;
  }
  return twin;
}
