import type { Diagnostic } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { unresolved } from "../parts/complaints.ts";
import { isDefect, isExcusable, WHOLE } from "../stage/acceptance.ts";
import type { Stage } from "../stage/index.ts";
import { STAGE_DEFECTS } from "../stage/stage-defects.ts";

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
  if (isExcusable(check)) return [];
  const path = ["accept", index, "check"];
  if (isDefect(check))
    return [unresolved(path, `${check} cannot be accepted`, "remove the line and mend what it found")];
  const known = Object.keys(STAGE_DEFECTS).filter(isExcusable);
  const set = nearest(check, known) ?? "the name a message printed, or part: the part that it was found on";
  return [unresolved(path, `${check} is no defect of a machine`, set)];
}
