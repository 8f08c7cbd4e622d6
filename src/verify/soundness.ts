import { cornerOf, facets, SLIVER } from "../geometry/facets.ts";
import type { Box, Mesh, Vec3 } from "../geometry/mesh.ts";
import { boxOf } from "./box-of.ts";
import { disjointSets } from "./disjoint-sets.ts";
import { isCollapsed, type MeshEdges, meshEdges, next } from "./mesh-edges.ts";

/** What a mesh says about itself. It is not searched for facets that pierce each other. */
export interface Soundness {
  readonly facets: number;
  /** Facets that lost a corner when the coordinates were rounded to float32. */
  readonly collapsed: number;
  /** Facets with three corners but an area below 1e-6 mm2. */
  readonly slivers: number;
  /** Edges of one facet only. */
  readonly openEdges: number;
  /** Edges of two facets that run along it in the same sense: one of them is inside out. */
  readonly flippedEdges: number;
  /** Edges of more than two facets. */
  readonly crowdedEdges: number;
  /** How many fans of facets share a corner with another fan; counted only when closed and oriented. */
  readonly pinchedCorners: number;
  /** Every edge has two facets. */
  readonly closed: boolean;
  /** No edge has two facets that run along it in the same sense. */
  readonly oriented: boolean;
  /** Parts of the surface that hang together by edges. */
  readonly shells: number;
  /** Shells that hold material, and shells that bound a hollow inside it. */
  readonly pieces: number;
  readonly voids: number;
  /** Corners - edges + facets, a pinched corner counted once for each fan; 2 for each shell without a handle. */
  readonly euler: number;
  /** Through holes, over all shells; NaN when the surface is not closed and oriented. */
  readonly genus: number;
  /** mm3, below zero when inside out. */
  readonly volume: number;
  /** mm2. */
  readonly area: number;
  readonly box: Box;
}

/** Returns how sound a mesh is as the surface of a body. Throws a RangeError when a facet is broken. */
export function soundness(mesh: Mesh, edges: MeshEdges = meshEdges(mesh)): Soundness {
  const { areas } = facets(edges.mesh);
  const { triangles } = edges.mesh;
  let [collapsed, slivers, area] = [0, 0, 0];
  areas.forEach((size, facet) => {
    if (isCollapsed(triangles, facet)) collapsed++;
    else if (size < SLIVER) slivers++;
    area += size;
  });
  const faults = edgeFaults(edges);
  const closed = faults.openEdges === 0 && faults.crowdedEdges === 0;
  const oriented = faults.flippedEdges === 0;
  const volumes = shellVolumes(edges);
  const places = countPlaces(edges);
  const whole = closed && oriented;
  const fans = whole ? countFans(edges) : places;
  const euler = fans - edges.count + areas.length - collapsed;
  return {
    facets: areas.length,
    collapsed,
    slivers,
    ...faults,
    pinchedCorners: fans - places,
    closed,
    oriented,
    shells: volumes.length,
    pieces: volumes.filter((volume) => volume > 0).length,
    voids: volumes.filter((volume) => volume < 0).length,
    euler,
    genus: whole ? volumes.length - euler / 2 : Number.NaN,
    volume: volumes.reduce((sum, volume) => sum + volume, 0),
    area,
    box: boxOf(edges.mesh),
  };
}

function edgeFaults({ count, upward, downward }: MeshEdges) {
  const faults = { openEdges: 0, flippedEdges: 0, crowdedEdges: 0 };
  for (let edge = 0; edge < count; edge++) {
    const up = upward[edge] as number;
    const down = downward[edge] as number;
    if (up + down === 1) faults.openEdges++;
    else if (up + down > 2) faults.crowdedEdges++;
    else if (up !== down) faults.flippedEdges++;
  }
  return faults;
}

/** The signed volume of each shell, in the order of its first facet. */
function shellVolumes({ mesh, edgeOf, count }: MeshEdges): number[] {
  const total = mesh.triangles.length / 3;
  const sets = disjointSets(total);
  const first = new Int32Array(count).fill(-1);
  for (let half = 0; half < edgeOf.length; half++) {
    const edge = edgeOf[half] as number;
    if (edge < 0) continue;
    const facet = (half / 3) | 0;
    if ((first[edge] as number) < 0) first[edge] = facet;
    else sets.join(first[edge] as number, facet);
  }
  const volumes = new Map<number, number>();
  // Measured from a corner of the mesh itself, so that a mesh far from the origin loses no digits.
  const origin: Vec3 = total === 0 ? [0, 0, 0] : cornerOf(mesh, 0, 0);
  for (let facet = 0; facet < total; facet++) {
    if (isCollapsed(mesh.triangles, facet)) continue;
    const shell = sets.find(facet);
    volumes.set(shell, (volumes.get(shell) ?? 0) + wedge(mesh, facet, origin));
  }
  return [...volumes.values()];
}

/** Signed volume between a facet and the origin. Written out: it runs once for every facet of every part. */
function wedge({ positions: p, triangles }: Mesh, facet: number, [x, y, z]: Vec3): number {
  const a = (triangles[facet * 3] as number) * 3;
  const b = (triangles[facet * 3 + 1] as number) * 3;
  const c = (triangles[facet * 3 + 2] as number) * 3;
  const bx = (p[b] as number) - x;
  const by = (p[b + 1] as number) - y;
  const bz = (p[b + 2] as number) - z;
  const cx = (p[c] as number) - x;
  const cy = (p[c + 1] as number) - y;
  const cz = (p[c + 2] as number) - z;
  const along = ((p[a] as number) - x) * (by * cz - bz * cy);
  const across = ((p[a + 1] as number) - y) * (bz * cx - bx * cz);
  return (along + across + ((p[a + 2] as number) - z) * (bx * cy - by * cx)) / 6;
}

/** Counts the places where a corner is. */
function countPlaces({ mesh: { positions, triangles }, edgeOf }: MeshEdges): number {
  const named = new Uint8Array(positions.length / 3);
  let places = 0;
  for (let half = 0; half < edgeOf.length; half++) {
    const corner = triangles[half] as number;
    if ((edgeOf[half] as number) < 0 || named[corner] === 1) continue;
    named[corner] = 1;
    places++;
  }
  return places;
}

/** Counts the fans of facets round corners, one a corner on a sound surface. Every half-edge must have its twin. */
function countFans({ twin, edgeOf }: MeshEdges): number {
  const walked = new Uint8Array(twin.length);
  let fans = 0;
  for (let half = 0; half < twin.length; half++) {
    if (walked[half] === 1 || (edgeOf[half] as number) < 0) continue;
    fans++;
    // Out along one edge of the corner, back along it in the next facet, and on to that facet's edge out of it.
    for (let out = half; walked[out] === 0; out = next(twin[out] as number)) walked[out] = 1;
  }
  return fans;
}
