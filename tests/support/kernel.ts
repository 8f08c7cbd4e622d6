import { type Body, type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import type { Solid } from "../../src/geometry/solid.ts";

export const kernel: Kernel = await loadKernel();

/** What the kernel says of a solid. */
export function measured(solid: Solid, tolerance?: number) {
  return kernel.build(solid, describe, tolerance);
}

function describe(body: Body) {
  return { mesh: body.mesh(), volume: body.volume(), box: body.box(), pieces: body.pieces() };
}

/** Volume by the divergence theorem, from the triangles alone. */
export function meshVolume({ positions, triangles }: Mesh): number {
  const at = (vertex: number, axis: number) => positions[vertex * 3 + axis] ?? Number.NaN;
  let six = 0;
  for (let facet = 0; facet < triangles.length; facet += 3) {
    const [a = 0, b = 0, c = 0] = triangles.subarray(facet, facet + 3);
    six +=
      at(a, 0) * (at(b, 1) * at(c, 2) - at(b, 2) * at(c, 1)) +
      at(a, 1) * (at(b, 2) * at(c, 0) - at(b, 0) * at(c, 2)) +
      at(a, 2) * (at(b, 0) * at(c, 1) - at(b, 1) * at(c, 0));
  }
  return six / 6;
}
