import type { Vec3 } from "../geometry/mesh.ts";

/** Returns a place as a reader wants it, in the frame of the print: `x 1.0, y -2.5, z 10.0`. */
export function place(at: Vec3): string {
  // Adding 0 turns -0 into 0.
  const [x, y, z] = at.map((value) => (Math.round(value * 10) / 10 + 0).toFixed(1));
  return `x ${x}, y ${y}, z ${z}`;
}
