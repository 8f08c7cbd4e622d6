import type { Mesh } from "./mesh.ts";

/** Grid of the written file, mm: a power of two, so that every coordinate up to 2 m is exact in 32-bit floats. */
export const GRID = 2 ** -13;

/**
 * Returns the mesh as it is printed: scaled in x and y, centred over the bed's origin, standing on z = 0, every
 * coordinate on the grid, equal corners merged and facets that collapsed by it dropped.
 */
export function printMesh(mesh: Mesh, scaleInPlane = 1): Mesh {
  const shift = restingPlace(mesh, scaleInPlane);
  const corners = new Map<string, number>();
  const positions: number[] = [];
  const renumbered = Uint32Array.from({ length: mesh.positions.length / 3 }, (_, vertex) => {
    const snapped = [0, 1, 2].map((axis) => {
      const scale = axis === 2 ? 1 : scaleInPlane;
      return Math.round(((mesh.positions[vertex * 3 + axis] ?? 0) * scale + (shift[axis] ?? 0)) / GRID) * GRID + 0;
    });
    const key = snapped.join();
    const known = corners.get(key);
    if (known !== undefined) return known;
    corners.set(key, corners.size);
    positions.push(...snapped);
    return corners.size - 1;
  });
  const triangles: number[] = [];
  for (let facet = 0; facet < mesh.triangles.length; facet += 3) {
    const [a = 0, b = 0, c = 0] = [0, 1, 2].map((corner) => renumbered[mesh.triangles[facet + corner] ?? 0]);
    if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Returns the shift that centres the scaled mesh in x and y and sets it on z = 0. */
export function restingPlace(mesh: Mesh, scaleInPlane = 1): [number, number, number] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  mesh.positions.forEach((value, index) => {
    const axis = index % 3;
    low[axis] = Math.min(low[axis] ?? value, value);
    high[axis] = Math.max(high[axis] ?? value, value);
  });
  const middle = (axis: number) => (-((low[axis] ?? 0) + (high[axis] ?? 0)) / 2) * scaleInPlane;
  return [middle(0), middle(1), -(low[2] ?? 0)];
}
