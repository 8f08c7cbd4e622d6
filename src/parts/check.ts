import type { Diagnostic, Level, Path } from "../core/diagnostic.ts";
import type { Unit } from "../core/unit.ts";
import type { Printer } from "../printing/printer.ts";

/** What a check found: everything of a Diagnostic but what the check itself knows. */
export interface Finding {
  readonly level: Level;
  readonly says: string;
  readonly set: string;
  readonly found?: number;
  readonly limit?: number;
  readonly unit?: Unit;
  /** The parameter to look at, when it differs from the check's own. */
  readonly path?: Path;
}

/** What a check looks at. */
interface Subject<Parameters, Derived> {
  readonly given: Parameters;
  readonly derived: Derived;
  readonly printer: Printer;
}

/** One thing that must hold. The name states the defect and is what the user meets. */
export interface Check<Parameters, Derived> {
  readonly name: string;
  /** The parameter to look at first. */
  readonly path: Path;
  /** Why it matters: what happens on the machine. */
  readonly why: string;
  /**
   * For each level the check can reach, the smallest change of the defaults that trips it: test, example and
   * demonstration in one. Printer settings stand under `printer`.
   */
  readonly trips: Partial<Readonly<Record<Level, Readonly<Record<string, unknown>>>>>;
  /** Errors that no reason can excuse. */
  readonly neverAccepted?: boolean;
  readonly test: (subject: Subject<Parameters, Derived>) => Finding | undefined;
}

interface Bounds {
  readonly value: number;
  readonly unit: Unit;
  readonly error?: number;
  readonly warning?: number;
  readonly says: (limit: number) => string;
  readonly set: string;
}

/** A finding when the value lies below its limits; nothing otherwise. */
export function below({ value, unit, error, warning, says, set }: Bounds): Finding | undefined {
  const slack = 1e-9;
  if (error !== undefined && value < error - slack) {
    return { level: "error", says: says(error), set, found: value, limit: error, unit };
  }
  if (warning !== undefined && value < warning - slack) {
    return { level: "warning", says: says(warning), set, found: value, limit: warning, unit };
  }
  return undefined;
}

/** A finding when the value lies above its limits; nothing otherwise. */
export function above({ value, unit, error, warning, says, set }: Bounds): Finding | undefined {
  const slack = 1e-9;
  if (error !== undefined && value > error + slack) {
    return { level: "error", says: says(error), set, found: value, limit: error, unit };
  }
  if (warning !== undefined && value > warning + slack) {
    return { level: "warning", says: says(warning), set, found: value, limit: warning, unit };
  }
  return undefined;
}

/** Runs every check and returns what they found as diagnostics. */
export function runChecks<Parameters, Derived>(
  checks: readonly Check<Parameters, Derived>[],
  subject: Subject<Parameters, Derived>,
): Diagnostic[] {
  return checks.flatMap((check) => {
    const finding = check.test(subject);
    return finding === undefined ? [] : [diagnosticOf(check, finding)];
  });
}

function diagnosticOf(check: Pick<Check<never, never>, "name" | "path" | "why">, finding: Finding): Diagnostic {
  const { unit = "", found, limit } = finding;
  return {
    name: check.name,
    level: finding.level,
    path: finding.path ?? check.path,
    says: finding.says,
    why: check.why,
    set: finding.set,
    ...(found === undefined ? {} : { found: { value: found, unit } }),
    ...(limit === undefined ? {} : { limit: { value: limit, unit } }),
  };
}
