import * as z from "zod";
import { DEFECTS, type DefectName, defect } from "../core/defects.ts";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { type ComplaintParams, metaOf, presented } from "../core/parameter.ts";
import { bare, keysAt, schemaAt, valueAt } from "./schema-walk.ts";

const STRANGE_KEY = "a misspelled key would leave the default in its place without a word";

/** What was checked, against what, and where it stands in its file. */
export interface Checked {
  readonly schema: z.ZodType;
  readonly data: unknown;
  readonly under: Path;
  /** The name of the defect where a value is wrong. */
  readonly name?: DefectName;
  /** Keys of the file that could not be read, by their paths ("" for any key): what is due to them is not told. */
  readonly lost?: readonly Path[];
}

type Issue = z.core.$ZodIssue;

/** Our schemas begin their own words for a wrong type like this; the library's begin otherwise. */
const OWN = /^expected /;

/** Returns what a schema found as Diagnostics, each with the name, the value, what is allowed and a cure. */
export function complaintsOf(error: z.ZodError, checked: Checked): Diagnostic[] {
  const issues = error.issues.flatMap(ofKey).filter((issue) => !isDueToLost(issue, checked));
  // What has the wrong type is not asked for its length as well.
  const wrong = new Set(issues.filter(isWrongType).map(({ path }) => JSON.stringify(path)));
  return issues
    .filter((issue) => isWrongType(issue) || !wrong.has(JSON.stringify(issue.path)))
    .flatMap((issue) => (issue.code === "unrecognized_keys" ? strangers(issue, checked) : [complaint(issue, checked)]));
}

/** Whether an issue is about a key that could not be read, or about a block that is empty without it. */
function isDueToLost({ path }: Issue, { data, under, lost = [] }: Checked): boolean {
  const whole = [...under, ...stepsOf(path)];
  const value = valueAt(data, path);
  return lost.some((one) => {
    if (whole.length < one.length) return value == null && whole.every((step, at) => step === one[at]);
    const any = one.at(-1) === "" && whole.length === one.length && value === undefined;
    return one.every((step, at) => whole[at] === step || (any && at === one.length - 1));
  });
}

/** A key of a map that is no name is told as what the schema of the keys says of it. */
function ofKey(issue: Issue): Issue[] {
  if (issue.code !== "invalid_key") return [issue];
  return issue.issues.slice(0, 1).map((inner) => ({ ...inner, path: issue.path }) as Issue);
}

/** Of more strange keys than these in one map the rest are counted only. */
const MANY = 30;

const isWrongType = ({ code }: Issue) => code === "invalid_type" || code === "invalid_union";

function strangers({ path, keys }: z.core.$ZodIssueUnrecognizedKeys, { schema, under }: Checked): Diagnostic[] {
  const known = keysAt(schema, path);
  const strange = (key: string, says: string, set: string) => ({
    ...unresolved([...under, ...stepsOf(path), key], says, set),
    why: STRANGE_KEY,
  });
  const all = `one of ${known.join(", ")}`;
  const each = keys.slice(0, MANY).map((key) => strange(key, `${key} is not a key here`, nearest(key, known) ?? all));
  const [next] = keys.slice(MANY);
  if (next === undefined) return each;
  return [...each, strange(next, `${keys.length - MANY} more keys are not known here, ${next} among them`, all)];
}

function complaint(issue: Issue, checked: Checked): Diagnostic {
  const { says, set, missing = false } = wording(issue, checked);
  const params: ComplaintParams = issue.code === "custom" ? ((issue.params ?? {}) as ComplaintParams) : {};
  const { found, limit, unit = "", why } = params;
  const steps = stepsOf(issue.path);
  return {
    ...unresolved([...checked.under, ...(missing ? steps.slice(0, -1) : steps)], says, params.set ?? set),
    ...(checked.name === undefined ? {} : { name: checked.name, why: DEFECTS[checked.name].why }),
    ...(found === undefined ? {} : { found: { value: found, unit } }),
    ...(limit === undefined ? {} : { limit: { value: limit, unit } }),
    ...(why === undefined ? {} : { why }),
  };
}

const stepsOf = (path: readonly PropertyKey[]): Path =>
  path.map((step) => (typeof step === "number" ? step : String(step)));

interface Wording {
  readonly says: string;
  readonly set: string;
  readonly missing?: boolean;
}

function wording(issue: Issue, { schema, data }: Checked): Wording {
  const name = nameOf(stepsOf(issue.path));
  const value = valueAt(data, issue.path);
  const at = schemaAt(schema, issue.path);
  if (issue.code === "custom") return { says: `${name}: ${issue.message}`, set: allowed(issue, at) };
  if (at !== undefined && bare(at) instanceof z.ZodTuple && Array.isArray(value)) {
    const { symbol } = metaOf(at);
    const takes = symbol === "" ? allowed(issue, at) : symbol;
    return { says: `${name} has ${value.length} ${unitOf("array", value.length)}; it takes ${takes}`, set: takes };
  }
  if (issue.code === "too_big") return size(issue, name, value, "at most", Number(issue.maximum));
  if (issue.code === "too_small") return size(issue, name, value, "at least", Number(issue.minimum));
  const takes = allowed(issue, at);
  if (value === undefined)
    return { says: `${name} is missing`, set: `${String(issue.path.at(-1))}: ${takes}`, missing: true };
  return { says: `${name} is ${presented(value)}; it takes ${takes}`, set: better(issue, at, value) ?? takes };
}

/** Returns how a person would name the place: `side of entry 1 of beltSpans`. */
function nameOf(path: Path): string {
  const [last, ...before] = [...path].reverse();
  if (last === undefined) return "the file";
  const own = typeof last === "number" ? `entry ${last + 1}` : last;
  return before.length === 0 ? own : `${own} of ${nameOf(before.reverse())}`;
}

/** Returns what the place takes, in words. */
function allowed(issue: Issue, at: z.ZodType | undefined): string {
  if (OWN.test(issue.message)) return issue.message.replace(OWN, "");
  const own = at === undefined ? undefined : bare(at);
  if (own instanceof z.ZodArray) return "a list in square brackets, even of one";
  if (own instanceof z.ZodTuple) return `a list of ${own.def.items.length}`;
  if (own instanceof z.ZodObject) return `keys and values: ${Object.keys(own.shape).join(", ")}`;
  if (own instanceof z.ZodLiteral || own instanceof z.ZodEnum) {
    const words = own instanceof z.ZodLiteral ? [...own.values] : own.options;
    return words.join(" or ");
  }
  const { description } = at === undefined ? { description: "" } : metaOf(at);
  return description === "" ? "another value" : description;
}

/** Returns a value that would pass and says the same, where there is one. */
function better({ path }: Issue, at: z.ZodType | undefined, value: unknown): string | undefined {
  const own = at === undefined ? undefined : bare(at);
  const key = path.findLast((step) => typeof step === "string");
  const written = (text: string) => (key === path.at(-1) ? `${String(key)}: ${text}` : text);
  if (own instanceof z.ZodArray && (own.element as z.ZodType).safeParse(value).success) {
    return written(`[${JSON.stringify(value)}]`);
  }
  if (own instanceof z.ZodObject && (typeof value === "string" || typeof value === "number")) {
    const form = formOf(own, value);
    return form === undefined ? undefined : written(form);
  }
  if (!(own instanceof z.ZodBoolean) || typeof value !== "string") return undefined;
  if (/^(yes|on|true)$/i.test(value)) return written("true");
  return /^(no|off|false)$/i.test(value) ? written("false") : undefined;
}

/** A thing with more keys than these that it must have is written as a block. */
const FEW = 4;

/**
 * Returns how a thing is written that was given as one bare value: `{ mass: 0.15 kg, at: [x, y] }`, the value at the
 * one key that takes it. Undefined where no key does, or several do.
 */
function formOf({ shape }: z.ZodObject, value: string | number): string | undefined {
  const keys = Object.entries(shape as Record<string, z.ZodType>).filter(
    ([, one]) => !one.safeParse(undefined).success,
  );
  const taking = keys.filter(([, one]) => one.safeParse(value).success);
  if (keys.length > FEW || taking.length !== 1) return undefined;
  const entries = keys.map(([key, one]) => {
    const { symbol } = metaOf(one);
    const blank = symbol.startsWith("[") ? symbol : "...";
    return `${key}: ${taking[0]?.[0] === key ? value : blank}`;
  });
  return `{ ${entries.join(", ")} }`;
}

function size({ origin }: { origin: string }, name: string, value: unknown, bound: string, limit: number): Wording {
  const many = (amount: number) => `${amount} ${unitOf(origin, amount)}`.trimEnd();
  const has =
    Array.isArray(value) || typeof value === "string" ? `has ${many(value.length)}` : `is ${presented(value)}`;
  return { says: `${name} ${has}; it takes ${bound} ${limit}`, set: `${bound} ${many(limit)}` };
}

function unitOf(origin: string, amount: number): string {
  if (origin === "array") return amount === 1 ? "entry" : "entries";
  return origin === "string" ? (amount === 1 ? "letter" : "letters") : "";
}

/** Returns the complaint that a file does not say what it means. */
export function unresolved(path: Path, says: string, set: string): Diagnostic {
  return defect("preset-does-not-resolve", { level: "error", path, says, set });
}
