import type { Defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { type Acceptance, accepted } from "../parts/acceptance.ts";
import type { Plan } from "./schema/index.ts";
import { STAGE_DEFECTS } from "./stage-defects.ts";

/** What `part:` of an acceptance says for the machine itself. */
export const WHOLE = "stage";

const DEFECTS: Readonly<Record<string, Defect>> = STAGE_DEFECTS;

/** Returns whether a name is that of a defect of a machine, and whether one of those may be accepted. */
export const isDefect = (name: string) => Object.hasOwn(DEFECTS, name);
export const isExcusable = (name: string) => isDefect(name) && DEFECTS[name]?.excusable === true;

/** Returns what the plan accepts of one part, by its name in the machine. */
export function acceptedOf({ accept }: Plan, name: string): Acceptance[] {
  return accept.filter(({ part }) => part === name).map(({ check, because }) => ({ check, because }));
}

/** Returns an error of the machine as a warning with the reason, where the plan accepts it and it may be accepted. */
export function withReason<Found extends Diagnostic>(found: Found, plan: Plan): Found {
  const reason = acceptedOf(plan, WHOLE).find(({ check }) => check === found.name && isExcusable(check));
  return reason === undefined || found.level !== "error" ? found : accepted(found, reason.because);
}
