import type { Vec3 } from "../geometry/mesh.ts";

/** Returns two directions that are square to this one and to each other, all of length 1. */
export function square(direction: Vec3): readonly [Vec3, Vec3] {
  const [x, y, z] = direction.map(Math.abs) as unknown as Vec3;
  const least = x <= y && x <= z ? unit(0, 1) : y <= z ? unit(1, 1) : unit(2, 1);
  const one = cross(direction, least);
  const unitOne = scaled(one, 1 / Math.hypot(...one));
  return [unitOne, cross(direction, unitOne)];
}

export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function plus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function minus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scaled(a: Vec3, by: number): Vec3 {
  return [a[0] * by, a[1] * by, a[2] * by];
}

/** Returns the vector of this length along an axis: 0 is x, 1 is y, 2 is z. */
export function unit(axis: number, length: number): Vec3 {
  return [axis === 0 ? length : 0, axis === 1 ? length : 0, axis === 2 ? length : 0];
}
