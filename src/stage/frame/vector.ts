import type { Vec3 } from "../../geometry/mesh.ts";

/** Arithmetic with directions and places in space. */

export const minus = ([ax, ay, az]: Vec3, [bx, by, bz]: Vec3): Vec3 => [ax - bx, ay - by, az - bz];

/** Returns `from` moved by `distance` along a direction. */
export const stepped = ([x, y, z]: Vec3, [dx, dy, dz]: Vec3, distance: number): Vec3 => [
  x + dx * distance,
  y + dy * distance,
  z + dz * distance,
];

export const dot = ([ax, ay, az]: Vec3, [bx, by, bz]: Vec3): number => ax * bx + ay * by + az * bz;

export const cross = ([ax, ay, az]: Vec3, [bx, by, bz]: Vec3): Vec3 => [
  ay * bz - az * by,
  az * bx - ax * bz,
  ax * by - ay * bx,
];

/** Returns the direction of length 1; the x-axis for what has no length. */
export function unit(of: Vec3): Vec3 {
  const length = Math.hypot(...of);
  return length > 0 ? [of[0] / length, of[1] / length, of[2] / length] : [1, 0, 0];
}

/** Returns the angle of a direction in plan, counter-clockwise from +x, -180 to 180 deg. */
export function azimuthOf([x, y]: readonly [number, number, ...number[]]): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}
