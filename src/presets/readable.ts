import * as z from "zod";
import type { Path } from "../core/diagnostic.ts";
import { bare, schemaAt } from "../parts/schema-walk.ts";

/** What could be read of a file, and where things were left out of it. */
interface Readable<Value> {
  readonly value: Value;
  readonly without: readonly Path[];
}

/** A thing may lack several keys, and things may lie in one another; no plan needs more rounds than these. */
const ROUNDS = 8;

/**
 * Returns what a schema reads of data once what is wrong is left out: a value that has a usual one by itself, anything
 * else with the named thing round it. What a file must have is taken from `holes`, by its path, so that the rest can be
 * read. Undefined where it still cannot.
 */
export function readableOf<Schema extends z.ZodType>(
  schema: Schema,
  data: unknown,
  holes: Readonly<Record<string, unknown>>,
): Readable<z.output<Schema>> | undefined {
  const copy = structuredClone(data);
  const without: Path[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const parsed = schema.safeParse(copy);
    if (parsed.success) return { value: parsed.data, without };
    const left = parsed.error.issues.map((issue) => leftOut(schema, copy, issue) ?? filled(copy, issue, holes));
    if (left.some((path) => path === undefined)) return undefined;
    for (const path of left) if (path !== undefined) without.push(path);
  }
  return undefined;
}

/** Leaves out what an issue is about; returns its path, or undefined where that cannot be done. */
function leftOut(schema: z.ZodType, data: unknown, issue: z.core.$ZodIssue): Path | undefined {
  const path = issue.path.map((step) => (typeof step === "number" ? step : String(step)));
  if (issue.code === "unrecognized_keys") {
    for (const key of issue.keys) drop(data, [...path, key]);
    return path;
  }
  for (let depth = path.length; depth > 0; depth--) {
    const place = path.slice(0, depth);
    if (!mayLack(schema, place)) continue;
    drop(data, place);
    return place;
  }
  return undefined;
}

/** Puts in what a file must have and an issue is about; returns its path, or undefined where no hole is. */
function filled(data: unknown, { path }: z.core.$ZodIssue, holes: Readonly<Record<string, unknown>>): Path | undefined {
  const steps = path.map(String);
  const place = [steps.slice(0, 2), steps.slice(0, 1)].find((one) => one.join(".") in holes);
  if (place === undefined) return undefined;
  const holder = place.slice(0, -1).reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], data);
  if (typeof holder !== "object" || holder === null) return undefined;
  (holder as Record<string, unknown>)[place.at(-1) as string] = structuredClone(holes[place.join(".")]);
  return place;
}

/** Whether a schema reads data that have nothing at a path: a key with a usual value, or a thing among others. */
function mayLack(schema: z.ZodType, path: Path): boolean {
  const holder = schemaAt(schema, path.slice(0, -1));
  const own = holder === undefined ? undefined : bare(holder);
  if (own instanceof z.ZodRecord) return true;
  const at = schemaAt(schema, path);
  return own instanceof z.ZodObject && at?.safeParse(undefined).success === true;
}

function drop(data: unknown, path: Path): void {
  const holder = path.slice(0, -1).reduce<unknown>((at, step) => (at as Record<PropertyKey, unknown>)?.[step], data);
  if (typeof holder === "object" && holder !== null)
    delete (holder as Record<PropertyKey, unknown>)[String(path.at(-1))];
}
