import { facets, SLIVER, vectorAt } from "../geometry/facets.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { facetLattice, facetSamples } from "./facet-samples.ts";
import { type NearestHit, rayTree } from "./ray-tree.ts";
import { holds, type Region } from "./region.ts";
import { plus, scaled, square } from "./vector.ts";

/** A place where the material is thin, in mm. */
export interface Wall {
  readonly thickness: number;
  /** The middle of the material there. */
  readonly at: Vec3;
}

export interface WallSearch {
  /** Samples per mm2 of surface; every facet is sampled at least once. */
  readonly sampleDensity: number;
  /** Rooms where the part is thin on purpose. */
  readonly except?: readonly Region[] | undefined;
}

/** Two faces make a wall when they are parallel within 20 degrees. Source: design rule, measured on known bodies. */
const OPPOSED = -Math.cos((20 * Math.PI) / 180);
/** Faces parallel within a tenth of a degree are as far apart everywhere. */
const PARALLEL = -Math.cos((0.1 * Math.PI) / 180);
const LEAST = 1e-6;
/** Two places nearer than this are one. */
const APART = 5;
const PLACES = 5;
/** Lettering and edge chamfers: what stands less than this above the body under it is no wall. */
const RELIEF = 0.5;

/**
 * Returns the thinnest walls of a body, thinnest first: at most 5 places, at least 5 mm apart; none when no two faces
 * lie opposite each other.
 *
 * From samples of the surface a ray goes straight into the material; where it leaves through a facet that is parallel
 * within 20 degrees, its length is the wall's thickness. Where the thinnest places taper, their facets are then sampled
 * closely up to their corners. Exact for parallel faces; blind to walls that taper by more than 20 degrees. What stands
 * less than 0.5 mm above its body (lettering) does not count. The mesh must be sound.
 */
export function thinnestWalls(mesh: Mesh, search: WallSearch): Wall[] {
  const { normals, areas } = facets(mesh);
  const nearest = rayTree(mesh);
  const found: { wall: Wall; facet: number; tapers: boolean }[] = [];
  // As thick as the thickest of the places that were found; thicker ones do not count once there are enough.
  let limit = Infinity;
  const probe = (facet: number, point: Vec3, normal: Vec3, inwards: Vec3) => {
    const hit = nearest(point, inwards, LEAST, limit);
    if (hit === undefined) return;
    const facing = turning(normals, hit.facet, normal);
    if (facing > OPPOSED) return;
    const at = plus(point, scaled(inwards, hit.distance / 2));
    const near = found.filter(({ wall }) => distance(wall.at, at) < APART);
    if (near.some(({ wall }) => wall.thickness <= hit.distance)) return;
    if (search.except?.some((region) => holds(region, at)) || isRelief(nearest, at, normal)) return;
    for (const thicker of near) found.splice(found.indexOf(thicker), 1);
    found.push({ wall: { thickness: hit.distance, at }, facet, tapers: facing > PARALLEL });
    found.sort((one, other) => one.wall.thickness - other.wall.thickness);
    found.length = Math.min(found.length, PLACES);
    limit = found.length < PLACES ? Infinity : (found.at(-1)?.wall.thickness ?? Infinity);
  };
  const probeAll = (facet: number, points: readonly Vec3[]) => {
    const normal = vectorAt(normals, facet);
    const inwards = scaled(normal, -1);
    for (const point of points) probe(facet, point, normal, inwards);
  };
  areas.forEach((area, facet) => {
    if (area >= SLIVER) probeAll(facet, facetSamples(mesh, facet, area, search.sampleDensity));
  });
  // A wall that tapers is thinnest at an edge, which no sample need have hit.
  for (const { facet } of found.filter(({ tapers }) => tapers)) {
    probeAll(facet, facetLattice(mesh, facet));
  }
  return found.map(({ wall }) => wall);
}

/** The cosine between the normal of a facet and a direction. */
function turning(normals: Float64Array, facet: number, direction: Vec3): number {
  const at = facet * 3;
  return (
    (normals[at] as number) * direction[0] +
    (normals[at + 1] as number) * direction[1] +
    (normals[at + 2] as number) * direction[2]
  );
}

function distance(one: Vec3, other: Vec3): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

/** The ways along the middle of a wall in which its edge is looked for. */
const WAYS = [0, 45, 90, 135]
  .map((angle) => (angle * Math.PI) / 180)
  .map((turn) => [Math.cos(turn), Math.sin(turn)] as const);

/** Whether the surface is near on one side along the wall's middle plane while the material goes on on the other. */
function isRelief(nearest: NearestHit, at: Vec3, normal: Vec3): boolean {
  const [one, other] = square(normal);
  return WAYS.some(([cos, sin]) => {
    const ahead = plus(scaled(one, cos), scaled(other, sin));
    const front = nearest(at, ahead, LEAST, 2 * RELIEF)?.distance;
    const back = nearest(at, scaled(ahead, -1), LEAST, 2 * RELIEF)?.distance;
    return (front === undefined && (back ?? 1) < RELIEF) || (back === undefined && (front ?? 1) < RELIEF);
  });
}
