import type { Topic } from "../fact.ts";
import type { LoadCases } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/** Returns what the screws carry in every case; undefined loads where the screws cannot carry the stage. */
export function shareLoads(_plan: Plan): Topic & { readonly loads: LoadCases | undefined } {
  return { loads: undefined, sections: [], diagnostics: [] };
}
