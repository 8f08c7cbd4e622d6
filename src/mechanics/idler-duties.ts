import { isRefusal, type Refusal, results } from "../core/calculation.ts";
import { type BeltLoop, beltLoop, type LoopNode } from "./belt-loop.ts";
import { teethInMesh } from "./teeth-in-mesh.ts";

/** A node of a loop; `teeth` are those of a toothed pulley, and a smooth idler has none. */
export interface MeshedNode extends LoopNode {
  readonly teeth?: number;
}

export interface IdlerDuty {
  readonly name: string;
  /** Whether the loop still meshes well without it. */
  readonly parkable: boolean;
  /** Why it must stay, or what is left without it. */
  readonly says: string;
}

/** Teeth in mesh that belt makers want. */
const WANTED = 6;

/**
 * Returns, for each smooth idler of a loop, whether it may be parked: whether every toothed pulley keeps six teeth in
 * mesh without it, or as many as it has with it. An idler that makes wrap must stay, however slack the belt is.
 *
 * Refuses a loop that is not sound, and a number of teeth that no pulley has. Source: plane geometry; the six teeth are
 * belt makers' practice.
 */
export function idlerDuties(nodes: readonly MeshedNode[]): readonly IdlerDuty[] | Refusal {
  const whole = beltLoop(nodes);
  if (isRefusal(whole)) return whole;
  for (const { teeth } of nodes) {
    const mesh = teeth === undefined ? {} : teethInMesh.compute({ teeth, wrap: 0 });
    if (isRefusal(mesh)) return mesh;
  }
  const idlers = nodes.filter(({ teeth }) => teeth === undefined);
  return idlers.map((idler) => dutyOf(idler, nodes, meshes(nodes, whole)));
}

function dutyOf(idler: MeshedNode, nodes: readonly MeshedNode[], before: ReadonlyMap<string, number>): IdlerDuty {
  const { name } = idler;
  const others = nodes.filter((node) => node !== idler);
  const loop = beltLoop(others);
  if (isRefusal(loop)) return { name, parkable: false, says: `without it ${loop.refused}` };
  for (const [pulley, mesh] of meshes(others, loop)) {
    if (mesh >= Math.min(WANTED, before.get(pulley) as number) - 1e-9) continue;
    return { name, parkable: false, says: `without it ${pulley} has ${mesh.toFixed(1)} teeth in mesh` };
  }
  return { name, parkable: true, says: "every pulley keeps its teeth in mesh without it" };
}

function meshes(nodes: readonly MeshedNode[], loop: BeltLoop): ReadonlyMap<string, number> {
  const meshed = new Map<string, number>();
  for (const [index, { name, teeth }] of nodes.entries()) {
    if (teeth === undefined) continue;
    meshed.set(name, results(teethInMesh, { teeth, wrap: loop.wraps[index] as number }).mesh);
  }
  return meshed;
}
