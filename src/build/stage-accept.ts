import type { Defect } from "../core/defects.ts";
import { type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { unresolved } from "../parts/complaints.ts";
import type { Plan, Stage } from "../stage/index.ts";
import { STAGE_DEFECTS } from "../stage/stage-defects.ts";
import { accepted } from "./accept.ts";

/** What `part:` of an acceptance says for the machine itself. */
export const WHOLE = "stage";

const DEFECTS: Readonly<Record<string, Defect>> = STAGE_DEFECTS;
const isDefect = (name: string) => Object.hasOwn(DEFECTS, name);
const excusable = (name: string) => isDefect(name) && DEFECTS[name]?.excusable === true;

/** Returns an error of the machine as a warning with the reason, where the plan accepts it and it may be accepted. */
export function withReason<Found extends Diagnostic>(found: Found, { accept }: Plan): Found {
  const reason = accept.find(({ part, check }) => part === WHOLE && check === found.name && excusable(check));
  if (reason === undefined || found.level !== "error") return found;
  return { ...found, ...accepted(found, reason.because) };
}

/** Returns the machine with every accepted error of its own turned into a warning that repeats the reason. */
export function withAcceptances(stage: Stage): Stage {
  if (stage.plan.accept.length === 0 || !hasErrors(stage.diagnostics)) return stage;
  return { ...stage, diagnostics: stage.diagnostics.map((found) => withReason(found, stage.plan)) };
}

/** Returns an error for each acceptance that names no part of the machine, or no defect of it that may be accepted. */
export function strangeAcceptances({ plan, parts }: Pick<Stage, "plan" | "parts">): Diagnostic[] {
  const names = [...parts.map(({ name }) => name), WHOLE];
  return plan.accept.flatMap(({ part, check }, index) => {
    if (part === WHOLE) return strangeDefect(check, index);
    if (names.includes(part)) return [];
    const set = nearest(part, names) ?? `one of ${names.join(", ")}`;
    return [unresolved(["accept", index, "part"], `the machine has no part ${part}`, set)];
  });
}

function strangeDefect(check: string, index: number): Diagnostic[] {
  if (excusable(check)) return [];
  const path = ["accept", index, "check"];
  if (isDefect(check))
    return [unresolved(path, `${check} cannot be accepted`, "remove the line and mend what it found")];
  const known = Object.keys(DEFECTS).filter(excusable);
  const set = nearest(check, known) ?? "the name a message printed, or part: the part that it was found on";
  return [unresolved(path, `${check} is no defect of a machine`, set)];
}
