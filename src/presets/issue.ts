import type { z } from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import type { ComplaintParams } from "../core/parameter.ts";

const STRANGE_KEY = "a misspelled key would leave the default in its place without a word";
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
      return { ...unresolved([...path, unknown], `${unknown} is not a key here`, set), why: STRANGE_KEY };
    });
  }
  const params: ComplaintParams = issue.code === "custom" ? ((issue.params ?? {}) as ComplaintParams) : {};
  const missing = issue.code === "invalid_type" && issue.message.includes("received undefined");
  const message = missing ? "is missing" : issue.message;
  const diagnostic = unresolved(path, missing ? `${key} is missing` : `${key}: ${message}`, params.set ?? cure(issue));
  return [
    {
      ...diagnostic,
      ...(params.found === undefined ? {} : { found: { value: params.found, unit: params.unit ?? "" } }),
      ...(params.limit === undefined ? {} : { limit: { value: params.limit, unit: params.unit ?? "" } }),
      ...(params.why === undefined ? {} : { why: params.why }),
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
