import type { Vec2 } from "./mesh.ts";

/** Largest distance between a circle and its polygon on an exported part, in mm. */
export const CHORD_TOLERANCE = 0.01;

/**
 * Returns how many sides the polygon of a circle has: the smallest multiple of 4, at least 24, whose chord error is
 * within `tolerance`. `radius` and `tolerance` in mm. Source: geometry.
 */
export function segments(radius: number, tolerance = CHORD_TOLERANCE): number {
  if (radius <= tolerance) return 24;
  const needed = Math.PI / Math.acos(1 - tolerance / radius);
  return Math.max(24, 4 * Math.ceil(needed / 4 - 1e-9));
}

/** Returns the corner radius of a polygon of `sides` whose flats touch the circle of `radius`. */
export function circumscribed(radius: number, sides: number): number {
  return radius / Math.cos(Math.PI / sides);
}

/** Returns the corners of a regular polygon, counter-clockwise, with flats facing +-x and +-y. */
export function ring(cornerRadius: number, sides: number, at: Vec2 = [0, 0]): Vec2[] {
  return Array.from({ length: sides }, (_, side): Vec2 => {
    const azimuth = ((side + 0.5) * 2 * Math.PI) / sides;
    return [at[0] + cornerRadius * Math.cos(azimuth), at[1] + cornerRadius * Math.sin(azimuth)];
  });
}
