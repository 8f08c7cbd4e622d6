import type { MeshedNode } from "../../src/mechanics/idler-duties.ts";
import type { BeltNode } from "../../src/stage/machine.ts";

/** Returns a node as a loop of a machine has it: a usual pulley for a belt 6 wide, of 2 mm pitch. */
export function beltNode(node: MeshedNode): BeltNode {
  const kind = node.name === "motor" ? "motor" : "screw";
  return { ...node, kind, flange: node.radius + 1.5, groove: 7, rim: 1, pitch: 2 };
}
