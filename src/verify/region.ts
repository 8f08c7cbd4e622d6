import type { Vec3 } from "../geometry/mesh.ts";
import { dot, minus, plus, scaled, square, unit } from "./vector.ts";

/** The points with normal . point <= offset. */
export interface HalfSpace {
  readonly normal: Vec3;
  readonly offset: number;
}

/** A convex room: the points that lie in all of its half-spaces. */
export type Region = readonly HalfSpace[];

/** Sides of the prism that stands for a cylinder; its section is 0.04 % too large. */
const SIDES = 96;

/** Returns the room of an axis-aligned box. */
export function boxRegion(min: Vec3, max: Vec3): Region {
  return [0, 1, 2].flatMap((axis) => [
    { normal: unit(axis, 1), offset: max[axis as 0] as number },
    { normal: unit(axis, -1), offset: -(min[axis as 0] as number) },
  ]);
}

/** Returns the room of a cylinder from the middle of one end to the middle of the other, closed by flat ends. */
export function cylinderRegion(from: Vec3, to: Vec3, radius: number): Region {
  const axis = minus(to, from);
  const length = Math.hypot(...axis);
  if (length === 0) throw new RangeError("the ends of a cylinder must differ");
  const along = scaled(axis, 1 / length);
  const [one, other] = square(along);
  const sides = Array.from({ length: SIDES }, (_, side) => {
    const angle = (2 * Math.PI * side) / SIDES;
    const normal = plus(scaled(one, Math.cos(angle)), scaled(other, Math.sin(angle)));
    return { normal, offset: dot(normal, from) + radius };
  });
  return [
    { normal: along, offset: dot(along, to) },
    { normal: scaled(along, -1), offset: -dot(along, from) },
    ...sides,
  ];
}

/** Returns whether a point lies in the room or on its border. */
export function holds(region: Region, point: Vec3): boolean {
  return region.every(({ normal, offset }) => dot(normal, point) <= offset);
}

/** Returns the part of a flat convex polygon that lies in the room; empty when none does, the same when all does. */
export function clip(polygon: readonly Vec3[], region: Region): readonly Vec3[] {
  let left = polygon;
  for (const half of region)
    if (!left.every((corner) => dot(half.normal, corner) <= half.offset)) left = cutBy(left, half);
  return left;
}

function cutBy(polygon: readonly Vec3[], { normal, offset }: HalfSpace): readonly Vec3[] {
  const kept: Vec3[] = [];
  polygon.forEach((corner, index) => {
    const following = polygon[(index + 1) % polygon.length] as Vec3;
    const here = dot(normal, corner) - offset;
    const there = dot(normal, following) - offset;
    if (here <= 0) kept.push(corner);
    if (here < 0 !== there < 0 && here !== 0 && there !== 0) {
      kept.push(plus(corner, scaled(minus(following, corner), here / (here - there))));
    }
  });
  return kept;
}
