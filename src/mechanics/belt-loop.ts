import type { Refusal } from "../core/calculation.ts";
import { flawRefusal } from "./loop-flaw.ts";
import { type BeltLoop, isFlaw, type LoopNode, traceLoop } from "./loop-trace.ts";

export type { BeltLoop, LoopNode, LoopSpan } from "./loop-trace.ts";

/**
 * Returns the exact pitch-line length, spans and wraps of a closed belt.
 *
 * `nodes` are 2 to 12, in the order in which the belt meets them, counter-clockwise; at least two stand inside, and
 * each is met once. Units: mm and deg. Refuses nodes that overlap, a node the belt does not touch, an order that it
 * cannot meet, spans that cross and spans that run through a node, each by its name. Source: plane geometry.
 */
export function beltLoop(nodes: readonly LoopNode[]): BeltLoop | Refusal {
  const outcome = traceLoop(nodes);
  return isFlaw(outcome) ? flawRefusal(nodes, outcome) : outcome;
}
