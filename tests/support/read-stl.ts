import type { Mesh } from "../../src/geometry/mesh.ts";

const HEADER = 80;
const FACET = 50;

/**
 * Returns the mesh of a binary STL, equal corners made one. The normals written in the file are not used. Throws a
 * RangeError when the length does not agree with the facet count.
 */
export function readStl(bytes: Uint8Array): Mesh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.length < HEADER + 4 ? -1 : view.getUint32(HEADER, true);
  const wanted = HEADER + 4 + count * FACET;
  if (count < 0 || bytes.length !== wanted) {
    throw new RangeError(`not a binary STL: ${bytes.length} bytes where ${count} facets take ${wanted}`);
  }
  const known = new Map<string, number>();
  const positions: number[] = [];
  const triangles = Uint32Array.from({ length: count * 3 }, (_, corner) => {
    const at = HEADER + 4 + Math.floor(corner / 3) * FACET + 12 + (corner % 3) * 12;
    const point = [0, 4, 8].map((offset) => view.getFloat32(at + offset, true));
    const name = point.join();
    const found = known.get(name);
    if (found !== undefined) return found;
    known.set(name, known.size);
    positions.push(...point);
    return known.size - 1;
  });
  return { positions: Float64Array.from(positions), triangles };
}

/** Returns the normals written in a binary STL, x, y, z of each facet. */
export function readStlNormals(bytes: Uint8Array): Float64Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(HEADER, true);
  return Float64Array.from({ length: count * 3 }, (_, index) => {
    return view.getFloat32(HEADER + 4 + Math.floor(index / 3) * FACET + (index % 3) * 4, true);
  });
}
