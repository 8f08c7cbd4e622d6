import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { wrongBars } from "./bar-references.ts";
import { wrongLoops } from "./loop-references.ts";

/**
 * Returns an error for each name in the plan that names nothing, and for each that stands in the wrong place: bars of
 * screws, mounts and carriages, nodes and slides of loops, loops of motor pulleys.
 */
export function wrongReferences(plan: Plan): Diagnostic[] {
  return [...wrongBars(plan), ...wrongLoops(plan)];
}
