import { onceForEach } from "../core/once-for-each.ts";
import type { Mesh } from "../geometry/mesh.ts";
import { numbering } from "../geometry/numbering.ts";

/** Returns how many facets name a corner that does not exist or has a coordinate that is not a finite number. */
export const brokenFacets = onceForEach(({ positions, triangles }: Mesh): number => {
  let broken = 0;
  for (let facet = 0; facet < triangles.length; facet += 3) {
    for (let k = 0; k < 3; k++) {
      const corner = (triangles[facet + k] ?? Number.NaN) * 3;
      const sum = (positions[corner] ?? Number.NaN) + (positions[corner + 1] ?? Number.NaN);
      if (Number.isFinite(sum + (positions[corner + 2] ?? Number.NaN))) continue;
      broken++;
      break;
    }
  }
  return broken;
});

/**
 * Returns the mesh as a reader of a binary STL sees it: coordinates rounded to float32, and corners that are then equal
 * made one. Facet i stays facet i. Throws a RangeError when a facet is broken (see `brokenFacets`).
 */
export function weld(mesh: Mesh): Mesh {
  if (brokenFacets(mesh) > 0) throw new RangeError("the mesh has a facet without three finite corners");
  // Adding 0 turns -0 into 0, which would otherwise differ in its bits.
  const rounded = new Float32Array(mesh.positions.length);
  for (let index = 0; index < rounded.length; index++) rounded[index] = (mesh.positions[index] as number) + 0;
  const bits = new Uint32Array(rounded.buffer);
  const count = rounded.length / 3;
  const number = numbering(count);
  const renamed = new Uint32Array(count);
  const positions = new Float64Array(rounded.length);
  let used = 0;
  for (let corner = 0; corner < count; corner++) {
    const at = corner * 3;
    const name = number(bits[at] as number, bits[at + 1] as number, bits[at + 2] as number);
    renamed[corner] = name;
    if (name < used) continue;
    for (let axis = 0; axis < 3; axis++) positions[used * 3 + axis] = rounded[at + axis] as number;
    used++;
  }
  const triangles = new Uint32Array(mesh.triangles.length);
  for (let index = 0; index < triangles.length; index++)
    triangles[index] = renamed[mesh.triangles[index] as number] as number;
  return { positions: positions.slice(0, used * 3), triangles };
}
