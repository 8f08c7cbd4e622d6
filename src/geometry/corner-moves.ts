import type { Vec2 } from "./mesh.ts";

/** Longest edge of a profile that is laid on a round wall, mm: a longer chord would sink too far below the round. */
const LONGEST = 2.5;

/** A corner nearer to the axis than this is on it, mm. */
const ON_AXIS = 1e-6;

/** Moves a corner of a turned body to where it lies once the halves are drawn out along x; see `revolved`. */
export function drawOut(at: [number, number, number], by: number): void {
  if (Math.abs(at[0]) > ON_AXIS) at[0] += at[0] > 0 ? by : -by;
}

/** Moves a corner of a flat body, x right, y up, z outwards, to where it lies on a wall of `radius`; see `laid`. */
export function layOn(at: [number, number, number], radius: number): void {
  const [x, y, out] = at;
  at[0] = Math.sqrt(Math.max(0, radius ** 2 - x ** 2)) + out;
  at[1] = x;
  at[2] = y;
}

/** Returns the contour with corners along its long edges, so that it can follow a round. */
export function divided(contour: readonly Vec2[]): [number, number][] {
  return contour.flatMap(([x, y], index) => {
    const [x1, y1] = contour[(index + 1) % contour.length] ?? [x, y];
    const steps = Math.max(1, Math.ceil(Math.abs(x1 - x) / LONGEST));
    return Array.from({ length: steps }, (_, step): [number, number] => [
      x + ((x1 - x) * step) / steps,
      y + ((y1 - y) * step) / steps,
    ]);
  });
}
