import Module from "manifold-3d";
import type { Mesh, Vec3 } from "../../src/geometry/mesh.ts";
import { weld } from "../../src/verify/weld.ts";

export interface Cut {
  /** Points out of the half that is kept, towards the viewer of the `iso` view. */
  readonly normal: Vec3;
  readonly offset: number;
}

const NORMALS: Readonly<Record<string, Vec3>> = { x: [1, 0, 0], y: [0, -1, 0], z: [0, 0, 1] };

/** Returns the cut that `x=0`, `y=2.5` or `z=5` asks for. Throws an Error on any other text. */
export function readCut(text: string): Cut {
  const [axis = "", value = ""] = text.split("=");
  const normal = NORMALS[axis];
  const at = Number(value);
  if (normal === undefined || value.trim() === "" || !Number.isFinite(at)) {
    throw new Error(`--cut ${text}: write x=0, y=2.5 or z=5`);
  }
  return { normal, offset: axis === "y" ? -at : at };
}

/** Returns what is left of a mesh behind the cut, closed. Throws when the mesh is not closed. */
export async function section(mesh: Mesh, { normal, offset }: Cut): Promise<Mesh> {
  const top = await Module();
  top.setup();
  const { positions, triangles } = weld(mesh);
  const whole = new top.Manifold(
    new top.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles }),
  );
  const [x, y, z] = normal;
  const half = whole.trimByPlane([-x, -y, -z], -offset);
  const { vertProperties, triVerts, numProp } = half.getMesh();
  const kept = Float64Array.from({ length: (vertProperties.length / numProp) * 3 }, (_, index) => {
    return vertProperties[Math.floor(index / 3) * numProp + (index % 3)] as number;
  });
  return { positions: kept, triangles: Uint32Array.from(triVerts) };
}
