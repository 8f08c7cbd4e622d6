import type { JsonSchema } from "./json-schema.ts";

const MM_PER_INCH = 25.4;

type Keywords = Record<string, unknown>;

/**
 * Returns the schema of a plan whose ranges of lengths hold for bare numbers in the unit that `units` names. Everything
 * else stands once, with the meanings; two skeletons that hold nothing but the ranges follow it, and `units` decides
 * between them.
 */
export function withInches(schema: JsonSchema): JsonSchema {
  const { definitions = {}, ...body } = schema as Keywords & { definitions?: Keywords };
  const ranged = Object.keys(definitions).filter((name) => skeleton("", 1, [])(definitions[name]) !== undefined);
  const [mm, inch] = [skeleton("-mm", 1, ranged), skeleton("-in", MM_PER_INCH, ranged)] as const;
  const every = (names: readonly string[], suffix: string, change: Change) =>
    names.map((name) => [`${name}${suffix}`, change(definitions[name])]);
  const all = [
    ...every(Object.keys(definitions), "", bareOf),
    ...every(ranged, "-mm", mm),
    ...every(ranged, "-in", inch),
  ];
  return {
    ...(bareOf(body) as Keywords),
    if: { properties: { units: { const: "in" } }, required: ["units"] },
    // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
    then: inch(body),
    else: mm(body),
    definitions: Object.fromEntries(all),
  };
}

type Change = (value: unknown) => unknown;

const isLength = ({ allOf, minimum }: Keywords) =>
  minimum !== undefined && Array.isArray(allOf) && allOf.some((one) => one.$ref === "#/definitions/length");

/** Returns the schema without the ranges of lengths. */
function bareOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bareOf);
  if (typeof value !== "object" || value === null) return value;
  const { minimum, maximum, ...rest } = value as Keywords;
  if (isLength(value as Keywords)) return rest;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, bareOf(one)]));
}

/** Returns what makes the ranges of lengths and nothing else; undefined where there is none. */
function skeleton(suffix: string, unit: number, ranged: readonly string[]): Change {
  const change: Change = (value) => {
    if (Array.isArray(value)) {
      const inside = value.map(change);
      return inside.every((one) => one === undefined) ? undefined : inside.map((one) => one ?? {});
    }
    if (typeof value !== "object" || value === null) return undefined;
    const { type, minimum, maximum, $ref, ...rest } = value as Keywords;
    if (isLength(value as Keywords)) return { type, minimum: Number(minimum) / unit, maximum: Number(maximum) / unit };
    if ($ref !== undefined)
      return ranged.some((name) => `#/definitions/${name}` === $ref) ? { $ref: `${$ref}${suffix}` } : undefined;
    return held(rest, type, change);
  };
  return change;
}

const INSIDE = ["properties", "additionalProperties", "items", "allOf"];

function held(value: Keywords, type: unknown, change: Change): Keywords | undefined {
  const inside = INSIDE.flatMap((key) => {
    const one = value[key];
    const changed = key === "properties" ? properties(one as Keywords | undefined, change) : change(one);
    return changed === undefined ? [] : [[key, changed]];
  });
  const { items, minItems, maxItems, additionalItems } = value;
  const tuple = Array.isArray(items) ? { minItems, maxItems, additionalItems } : {};
  return inside.length === 0
    ? undefined
    : { ...(type === undefined ? {} : { type }), ...Object.fromEntries(inside), ...tuple };
}

function properties(all: Keywords | undefined, change: Change): Keywords | undefined {
  const changed = Object.entries(all ?? {}).flatMap(([key, one]) => {
    const own = change(one);
    return own === undefined ? [] : [[key, own]];
  });
  return changed.length === 0 ? undefined : Object.fromEntries(changed);
}
