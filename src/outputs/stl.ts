import { serializeBinary } from "@jscad/stl-serializer/CSGToStlb.js";
import { facetSolid } from "../geometry/jscad.ts";
import type { Mesh } from "../geometry/mesh.ts";

const HEADER = 80;

/**
 * Returns a binary STL in mm. The 80-byte header carries the part's name and the hash of its preset in ASCII; it never
 * starts with "solid", which readers take for the text form.
 */
export function stl(mesh: Mesh, name: string, hash: string): Uint8Array {
  const corner = (index: number): [number, number, number] => {
    const at = (mesh.triangles[index] ?? 0) * 3;
    return [mesh.positions[at] ?? 0, mesh.positions[at + 1] ?? 0, mesh.positions[at + 2] ?? 0];
  };
  const facets = Array.from({ length: mesh.triangles.length / 3 }, (_, facet) => {
    const first = facet * 3;
    return [corner(first), corner(first + 1), corner(first + 2)] as const;
  });
  const [, ...rest] = serializeBinary([facetSolid(facets)], {});
  const bytes = new Uint8Array(HEADER + rest.reduce((sum, buffer) => sum + buffer.byteLength, 0));
  bytes.fill(0x20, 0, HEADER);
  const title = `tramwright ${name} ${hash} mm`.replace(/[^\x20-\x7e]/g, "?").slice(0, HEADER);
  bytes.set(Uint8Array.from(title, (letter) => letter.charCodeAt(0)));
  let offset = HEADER;
  for (const buffer of rest) {
    bytes.set(new Uint8Array(buffer), offset);
    offset += buffer.byteLength;
  }
  return bytes;
}
