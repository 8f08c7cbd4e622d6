import type { Mesh } from "./mesh.ts";
import { numbering } from "./numbering.ts";

/** Grid of the written file, mm: a power of two, so that every coordinate up to 2 m is exact in 32-bit floats. */
export const GRID = 2 ** -13;

/**
 * Returns the mesh as it is printed: scaled in x and y, centred over the bed's origin, standing on z = 0, every
 * coordinate on the grid, equal corners merged and facets that collapsed by it dropped.
 */
export function printMesh({ positions, triangles }: Mesh, scaleInPlane = 1): Mesh {
  const shift = restingPlace({ positions, triangles }, scaleInPlane);
  const count = positions.length / 3;
  const number = numbering(count);
  const renumbered = new Uint32Array(count);
  const snapped = new Float64Array(positions.length);
  const steps = (at: number, axis: 0 | 1 | 2, scale: number) =>
    Math.round(((positions[at + axis] as number) * scale + shift[axis]) / GRID);
  let used = 0;
  for (let vertex = 0; vertex < count; vertex++) {
    const at = vertex * 3;
    const [x, y, z] = [steps(at, 0, scaleInPlane), steps(at, 1, scaleInPlane), steps(at, 2, 1)];
    // Unsigned, as the numbering keeps them: a step of -1 is as good a name as any.
    const name = number(x >>> 0, y >>> 0, z >>> 0);
    renumbered[vertex] = name;
    if (name < used) continue;
    snapped[used * 3] = x * GRID + 0;
    snapped[used * 3 + 1] = y * GRID + 0;
    snapped[used * 3 + 2] = z * GRID + 0;
    used++;
  }
  return { positions: snapped.slice(0, used * 3), triangles: withoutCollapsed(triangles, renumbered) };
}

function withoutCollapsed(triangles: Uint32Array, renumbered: Uint32Array): Uint32Array {
  const kept = new Uint32Array(triangles.length);
  let end = 0;
  for (let facet = 0; facet < triangles.length; facet += 3) {
    const a = renumbered[triangles[facet] as number] as number;
    const b = renumbered[triangles[facet + 1] as number] as number;
    const c = renumbered[triangles[facet + 2] as number] as number;
    if (a === b || b === c || c === a) continue;
    kept[end++] = a;
    kept[end++] = b;
    kept[end++] = c;
  }
  return kept.slice(0, end);
}

/** Returns the shift that centres the scaled mesh in x and y and sets it on z = 0. */
export function restingPlace({ positions }: Mesh, scaleInPlane = 1): [number, number, number] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let index = 0; index < positions.length; index++) {
    const axis = index % 3;
    const value = positions[index] as number;
    if (value < (low[axis] as number)) low[axis] = value;
    if (value > (high[axis] as number)) high[axis] = value;
  }
  const middle = (axis: number) => (-((low[axis] ?? 0) + (high[axis] ?? 0)) / 2) * scaleInPlane;
  return [middle(0), middle(1), -(low[2] ?? 0)];
}
