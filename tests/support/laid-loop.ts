import { isRefusal } from "../../src/core/calculation.ts";
import { beltLoop } from "../../src/mechanics/belt-loop.ts";
import type { BeltNode, LoopChoice } from "../../src/stage/machine.ts";

/** Returns a loop laid by hand, nothing chosen: its nodes in the order of the belt. Throws where no belt lies so. */
export function laidLoop(loop: string, nodes: readonly BeltNode[]): LoopChoice {
  const belt = beltLoop(nodes);
  if (isRefusal(belt)) throw new RangeError(`${loop}: ${belt.refused}`);
  const unknown = { stock: [], bought: undefined, slid: undefined, gaps: [], meshes: [] };
  return { loop, nodes, belt, nominal: belt.length, ...unknown };
}
