import type { Unit } from "./unit.ts";

export type Level = "error" | "warning" | "note";

export interface Amount {
  readonly value: number;
  readonly unit: Unit;
}

/** A place in the parameters, from the outside in: `["washers", 0]`. */
export type Path = readonly (string | number)[];

/**
 * Something the user should know about a preset or a part. It is data: the words of the layout and the line and
 * column are added where it is printed.
 */
export interface Diagnostic {
  /** The defect by its name, `washer-spans-both-rings`. */
  readonly name: string;
  readonly level: Level;
  /** The parameter to look at first; empty when the whole preset is meant. */
  readonly path: Path;
  /** One sentence, no full stop, that states the defect with its numbers. */
  readonly says: string;
  readonly found?: Amount | undefined;
  readonly limit?: Amount | undefined;
  /** What happens to the machine or the print if nothing is done. */
  readonly why: string;
  /** What to set so that it passes, with a value where one can be computed. */
  readonly set: string;
}

/** Returns how many of each level there are. */
export function count(diagnostics: readonly Diagnostic[]): Record<Level, number> {
  const counts = { error: 0, warning: 0, note: 0 };
  for (const diagnostic of diagnostics) counts[diagnostic.level]++;
  return counts;
}

/** Returns whether the part must not be written. */
export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.level === "error");
}
