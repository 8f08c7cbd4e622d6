import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { wrongBars } from "./bar-references.ts";
import { wrongLoops } from "./loop-references.ts";
import type { Unread } from "./unread.ts";

/**
 * Returns an error for each name in the plan that names nothing, and for each that stands in the wrong place: bars of
 * screws, mounts and carriages, nodes and slides of loops, loops of motor pulleys. What only seems wrong because
 * something else was, or could not be read, is not told.
 */
export function wrongReferences(plan: Plan, unread: Unread = []): Diagnostic[] {
  return [...wrongBars(plan, unread), ...wrongLoops(plan, unread)];
}
