import { defect } from "../../core/defects.ts";
import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import { nearest } from "../../core/nearest.ts";

const NOWHERE = "what hangs on a name that leads nowhere has no place in the machine, and is left out of it";

/** Returns the complaint about a place of the plan. */
export function wrong(path: Path, says: string, set: string, why: string): Diagnostic {
  return { ...defect("preset-does-not-resolve", { level: "error", path, says, set }), why };
}

/** Returns the complaint about a name that is not among the known ones; nothing when it is. */
export function stranger(path: Path, what: string, name: string, known: readonly string[]): Diagnostic[] {
  if (known.includes(name)) return [];
  const choice = known.length === 0 ? `a ${what}; there is none yet` : `one of ${known.join(", ")}`;
  // Any two names of a letter are near each other.
  const near = name.length > 1 ? nearest(name, known) : undefined;
  return [wrong(path, `there is no ${what} ${name}`, near ?? choice, NOWHERE)];
}
