import { DEFECTS, type Defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { AnyFamily } from "./family.ts";

/** An error that the user takes on, by name and with a reason. */
export interface Acceptance {
  readonly check: string;
  readonly because: string;
}

/** Found on the finished mesh or in the file itself: no reason makes these right. */
const NEVER = Object.entries<Defect>(DEFECTS)
  .filter(([, { excusable }]) => !excusable)
  .map(([name]) => name);

/** Returns the diagnostics of a part with every accepted error turned into a warning that repeats the reason. */
export function applyAcceptance<Found extends Diagnostic>(
  diagnostics: readonly Found[],
  accept: readonly Acceptance[],
  family: Pick<AnyFamily, "checks">,
): Found[] {
  const forbidden = forbiddenIn(family);
  const reasons = new Map(accept.filter(({ check }) => !forbidden.has(check)).map((one) => [one.check, one.because]));
  return diagnostics.map((diagnostic) => {
    const because = reasons.get(diagnostic.name);
    if (because === undefined || diagnostic.level !== "error") return diagnostic;
    return accepted(diagnostic, because);
  });
}

/** Returns the names of what nobody may accept of a part of a family. */
export function forbiddenIn({ checks }: Pick<AnyFamily, "checks">): ReadonlySet<string> {
  return new Set([...NEVER, ...checks.filter((check) => check.neverAccepted).map(({ name }) => name)]);
}

const ACCEPTED = " (accepted: ";

/** Returns an error as the warning that it becomes when somebody accepts it: the reason is repeated. */
export function accepted<Found extends Diagnostic>(diagnostic: Found, because: string): Found {
  return { ...diagnostic, level: "warning", says: `${diagnostic.says}${ACCEPTED}${because})` };
}

/** Returns what a message said before it was accepted. */
export function saidBefore(says: string): string {
  return says.split(ACCEPTED)[0] ?? says;
}
