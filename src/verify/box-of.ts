import type { Box, Mesh, Vec3 } from "../geometry/mesh.ts";

/** Returns the box round all corners that a facet names; all zero for an empty mesh. */
export function boxOf({ positions, triangles }: Mesh): Box {
  if (triangles.length === 0) return { min: [0, 0, 0], max: [0, 0, 0] };
  const named = new Uint8Array(positions.length / 3);
  for (let index = 0; index < triangles.length; index++) named[triangles[index] as number] = 1;
  const min = [Infinity, Infinity, Infinity];
  const max = [-Infinity, -Infinity, -Infinity];
  for (let corner = 0; corner < named.length; corner++) {
    if (named[corner] === 0) continue;
    for (let axis = 0; axis < 3; axis++) {
      const value = positions[corner * 3 + axis] as number;
      if (value < (min[axis] as number)) min[axis] = value;
      if (value > (max[axis] as number)) max[axis] = value;
    }
  }
  return { min: min as unknown as Vec3, max: max as unknown as Vec3 };
}
