import { onceForEach } from "../core/once-for-each.ts";
import { facets } from "../geometry/facets.ts";
import type { Mesh } from "../geometry/mesh.ts";

/** Bytes of the header, of the count behind it, and of a facet: normal, three corners, two bytes that nobody uses. */
const HEADER = 80;
const COUNT = 4;
const FACET = 50;

/**
 * Returns a binary STL in mm: little-endian, each facet with its normal of length 1 (0, 0, 0 where it has no area). The
 * 80-byte header carries the part's name and the hash of its preset in ASCII; it never starts with "solid", which readers
 * take for the text form.
 */
export function stl(mesh: Mesh, name: string, hash: string): Uint8Array {
  const bytes = bodyOf(mesh).slice();
  const title = `tramwright ${name} ${hash} mm`.replace(/[^\x20-\x7e]/g, "?").slice(0, HEADER);
  bytes.set(Uint8Array.from(title, (letter) => letter.charCodeAt(0)));
  return bytes;
}

/** The file with an empty header. Parts that are alike share it. */
const bodyOf = onceForEach((mesh: Mesh): Uint8Array => {
  const { positions, triangles } = mesh;
  const { normals } = facets(mesh);
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEADER + COUNT + FACET * count);
  bytes.fill(0x20, 0, HEADER);
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER, count, true);
  for (let facet = 0; facet < count; facet++) {
    const at = HEADER + COUNT + facet * FACET;
    const a = (triangles[facet * 3] as number) * 3;
    const b = (triangles[facet * 3 + 1] as number) * 3;
    const c = (triangles[facet * 3 + 2] as number) * 3;
    for (let axis = 0; axis < 3; axis++) {
      view.setFloat32(at + axis * 4, normals[facet * 3 + axis] as number, true);
      view.setFloat32(at + 12 + axis * 4, positions[a + axis] as number, true);
      view.setFloat32(at + 24 + axis * 4, positions[b + axis] as number, true);
      view.setFloat32(at + 36 + axis * 4, positions[c + axis] as number, true);
    }
  }
  return bytes;
});
