import { cornerOf, facets, SLIVER, vectorAt } from "../geometry/facets.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { isCollapsed, type MeshEdges } from "./mesh-edges.ts";
import { dot, minus, plus, scaled } from "./vector.ts";

/** One edge of the outline of a region, seen from above, in mm. */
export interface OutlineEdge {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** Whether printed material or the bed is under this edge. */
  readonly held: boolean;
}

/** Connected facets that face the bed and are flatter than 45 degrees. */
export interface OverhangRegion {
  readonly outline: readonly OutlineEdge[];
  /** mm2, seen from above. */
  readonly area: number;
  /** z of its lowest corner, in mm. */
  readonly height: number;
  /** The middle of its largest facet. */
  readonly middle: Vec3;
}

/** A facet 45 degrees from the vertical prints by itself; a degree covers round holes and what rounding bends. */
const FLATTER = -Math.cos((44 * Math.PI) / 180);
const DOWN: Vec3 = [0, 0, -1];

/**
 * Returns the regions of a mesh that a printer must lay over air: facets flatter than 45 degrees that face down, above
 * half a layer (mm), joined where they share an edge. z is up and the bed is z = 0.
 */
export function overhangRegions(edges: MeshEdges, layer: number): OverhangRegion[] {
  const { mesh } = edges;
  const { normals, areas } = facets(mesh);
  const bed = layer / 2;
  const seen = new Uint8Array(areas.length);
  const isOverhang = (facet: number) =>
    (areas[facet] as number) >= SLIVER &&
    (normals[facet * 3 + 2] as number) < FLATTER &&
    Math.max(...[0, 1, 2].map((k) => cornerOf(mesh, facet, k)[2])) > bed;
  // A sliver has no direction of its own: it goes with the region beside it.
  const belongs = (facet: number) =>
    isOverhang(facet) || ((areas[facet] as number) < SLIVER && !isCollapsed(mesh.triangles, facet));
  const regions: OverhangRegion[] = [];
  for (let facet = 0; facet < areas.length; facet++) {
    if (seen[facet] === 1 || !isOverhang(facet)) continue;
    const members = flood(facet, edges.twin, seen, belongs);
    regions.push(regionOf(members, edges, normals, areas, bed));
  }
  return regions;
}

function flood(
  start: number,
  twin: Int32Array,
  seen: Uint8Array,
  belongs: (facet: number) => boolean,
): ReadonlySet<number> {
  const members = new Set([start]);
  seen[start] = 1;
  // A set hands out members that join while it is walked through.
  for (const facet of members) {
    for (let half = facet * 3; half < facet * 3 + 3; half++) {
      const other = twin[half] as number;
      const neighbour = Math.floor(other / 3);
      if (other < 0 || seen[neighbour] === 1 || !belongs(neighbour)) continue;
      seen[neighbour] = 1;
      members.add(neighbour);
    }
  }
  return members;
}

function regionOf(
  members: ReadonlySet<number>,
  { mesh, twin }: MeshEdges,
  normals: Float64Array,
  areas: Float64Array,
  bed: number,
): OverhangRegion {
  const outline: OutlineEdge[] = [];
  let [area, height, largest] = [0, Infinity, -1];
  for (const facet of members) {
    const size = areas[facet] as number;
    const corners = [0, 1, 2].map((k) => cornerOf(mesh, facet, k)) as [Vec3, Vec3, Vec3];
    const normal = size < SLIVER ? DOWN : vectorAt(normals, facet);
    area -= size * normal[2];
    height = Math.min(height, ...corners.map((corner) => corner[2]));
    if (largest < 0 || size > (areas[largest] as number)) largest = facet;
    for (let k = 0; k < 3; k++) {
      const other = twin[facet * 3 + k] as number;
      if (other >= 0 && members.has(Math.floor(other / 3))) continue;
      const [a, b] = [corners[k] as Vec3, corners[(k + 1) % 3] as Vec3];
      const held = (a[2] <= bed && b[2] <= bed) || (other >= 0 && isUnder(mesh, other, a, b, normal));
      outline.push({ ax: a[0], ay: a[1], bx: b[0], by: b[1], held });
    }
  }
  const sum = [0, 1, 2].reduce<Vec3>((total, k) => plus(total, cornerOf(mesh, largest, k)), [0, 0, 0]);
  return { outline, area, height, middle: scaled(sum, 1 / 3) };
}

/** Whether the facet beyond the edge from a to b goes down from it and is not the upper side of a tapering lip. */
function isUnder(mesh: Mesh, other: number, a: Vec3, b: Vec3, normal: Vec3): boolean {
  const third = cornerOf(mesh, Math.floor(other / 3), (other + 2) % 3);
  const edge = minus(b, a);
  const spoke = minus(third, a);
  const into = minus(spoke, scaled(edge, dot(spoke, edge) / dot(edge, edge)));
  const length = Math.hypot(...into);
  return length > 0 && into[2] < -1e-3 * length && dot(into, normal) > -0.05 * length;
}
