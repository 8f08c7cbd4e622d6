import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { facetLattice, facetSamples } from "./facet-samples.ts";
import { facets, SLIVER, vectorAt } from "./facets.ts";
import { type NearestHit, rayTree } from "./ray-tree.ts";
import { holds, type Region } from "./region.ts";
import { dot, plus, scaled, square } from "./vector.ts";

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
  const probe = (facet: number, point: Vec3) => {
    const limit = found.length < PLACES ? Infinity : (found.at(-1)?.wall.thickness ?? Infinity);
    const normal = vectorAt(normals, facet);
    const inwards = scaled(normal, -1);
    const hit = nearest(point, inwards, LEAST, limit);
    if (hit === undefined) return;
    const facing = dot(vectorAt(normals, hit.facet), normal);
    if (facing > OPPOSED) return;
    const at = plus(point, scaled(inwards, hit.distance / 2));
    const near = found.filter(({ wall }) => Math.hypot(...plus(wall.at, scaled(at, -1))) < APART);
    if (near.some(({ wall }) => wall.thickness <= hit.distance)) return;
    if (search.except?.some((region) => holds(region, at)) || isRelief(nearest, at, normal)) return;
    for (const thicker of near) found.splice(found.indexOf(thicker), 1);
    found.push({ wall: { thickness: hit.distance, at }, facet, tapers: facing > PARALLEL });
    found.sort((one, other) => one.wall.thickness - other.wall.thickness);
    found.length = Math.min(found.length, PLACES);
  };
  areas.forEach((area, facet) => {
    if (area < SLIVER) return;
    for (const point of facetSamples(mesh, facet, area, search.sampleDensity)) probe(facet, point);
  });
  // A wall that tapers is thinnest at an edge, which no sample need have hit.
  for (const { facet } of found.filter(({ tapers }) => tapers)) {
    for (const point of facetLattice(mesh, facet)) probe(facet, point);
  }
  return found.map(({ wall }) => wall);
}

/** Whether the surface is near on one side along the wall's middle plane while the material goes on on the other. */
function isRelief(nearest: NearestHit, at: Vec3, normal: Vec3): boolean {
  const [one, other] = square(normal);
  return [0, 45, 90, 135].some((angle) => {
    const turn = (angle * Math.PI) / 180;
    const ahead = plus(scaled(one, Math.cos(turn)), scaled(other, Math.sin(turn)));
    const [front, back] = [ahead, scaled(ahead, -1)].map((way) => nearest(at, way, LEAST, 2 * RELIEF)?.distance);
    return (front === undefined && (back ?? 1) < RELIEF) || (back === undefined && (front ?? 1) < RELIEF);
  });
}
