import type { z } from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";

/** What the parameter constructors put into a complaint. */
interface Params {
  readonly set?: string;
  readonly found?: number;
  readonly limit?: number;
}

const WHY = "a preset that does not say what it means would make a part that does not fit";

/**
 * Returns what a schema found as Diagnostics, `under` being where the checked data stands in the file. Unknown keys are
 * answered with the nearest of `known`.
 */
export function complaintsOf(error: z.ZodError, under: Path, known: readonly string[]): Diagnostic[] {
  return error.issues.flatMap((issue) => fromIssue(issue, under, known));
}

function fromIssue(issue: z.core.$ZodIssue, under: Path, known: readonly string[]): Diagnostic[] {
  const path = [...under, ...issue.path.map((step) => (typeof step === "number" ? step : String(step)))];
  const key = path.filter((step) => typeof step === "string").at(-1) ?? "";
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((unknown) => {
      const close = nearest(unknown, known);
      const set = close === undefined ? `one of ${known.join(", ")}` : `${close}`;
      return unresolved([...path, unknown], `${unknown} is not a key here`, set);
    });
  }
  const params: Params = issue.code === "custom" ? ((issue.params ?? {}) as Params) : {};
  const missing = issue.code === "invalid_type" && issue.message.includes("received undefined");
  const message = missing ? "is missing" : issue.message;
  const diagnostic = unresolved(path, missing ? `${key} is missing` : `${key}: ${message}`, params.set ?? cure(issue));
  return [
    {
      ...diagnostic,
      ...(params.found === undefined ? {} : { found: { value: params.found, unit: "" as const } }),
      ...(params.limit === undefined ? {} : { limit: { value: params.limit, unit: "" as const } }),
    },
  ];
}

function cure(issue: z.core.$ZodIssue): string {
  if (issue.code === "too_big") return `at most ${issue.maximum}`;
  if (issue.code === "too_small") return `at least ${issue.minimum}`;
  if (issue.code === "invalid_value") return issue.values.map(String).join(" or ");
  return issue.message.replace(/^.*expected /, "");
}

export function unresolved(path: Path, says: string, set: string): Diagnostic {
  return { name: "preset-does-not-resolve", level: "error", path, says, why: WHY, set };
}
