import type { Box } from "../geometry/mesh.ts";

/** The room a printer has, in mm. */
export interface Bed {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Returns whether a box fits the bed as it lies or turned by 90 degrees about the vertical. */
export function fitsBed({ min, max }: Box, bed: Bed): boolean {
  const [x, y, z] = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  const flat = (x <= bed.x && y <= bed.y) || (x <= bed.y && y <= bed.x);
  return flat && z <= bed.z;
}
