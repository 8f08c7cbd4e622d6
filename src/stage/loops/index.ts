import type { Topic } from "../fact.ts";
import type { LoopChoice, MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/** Returns the loops of the machine in plan: order of the nodes, lengths, stock, wraps, gaps. */
export function solveLoops(
  _plan: Plan,
  _pulleys: readonly MotorPulley[],
): Topic & { readonly loops: readonly LoopChoice[] } {
  return { loops: [], sections: [], diagnostics: [] };
}
