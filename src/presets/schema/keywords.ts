import * as z from "zod";
import { LIMITS, metaOf, type ParameterMeta, TABLE_OF } from "../../core/parameter.ts";
import { INSIDE, type Kind, shownUnitsOf } from "../../core/quantity.ts";
import { NUMBER_PATTERN, quantityPattern } from "../../core/quantity-pattern.ts";
import type { Table } from "../../core/table.ts";
import type { JsonSchema } from "./json-schema.ts";

/** Returns a reference to the definition of a bought item or of a quantity. */
export type Refer = (what: Table | Kind) => { readonly $ref: string };

/** Returns what a schema of our own says of its value, in the words of JSON Schema; undefined where it says nothing. */
export function keywordsOf(schema: z.ZodType, refer: Refer): JsonSchema | undefined {
  const table = TABLE_OF.get(schema)?.table;
  const { words } = ownMeta(schema);
  const limits = LIMITS.get(schema);
  if (table !== undefined) return { allOf: [refer(table)] };
  if (words !== undefined) return schema instanceof z.ZodBoolean ? { type: "boolean" } : oneOfWords(words);
  if (limits === undefined) return undefined;
  const { kind, min, max, whole, pattern } = limits;
  if (pattern !== undefined) return { type: "string", pattern };
  const range = { ...(min === undefined ? {} : { minimum: min }), ...(max === undefined ? {} : { maximum: max }) };
  // The range holds for numbers, the pattern of the kind for texts.
  if (kind !== undefined) return { type: ["number", "string"], ...range, allOf: [refer(kind)] };
  return whole === undefined ? undefined : { type: whole ? "integer" : "number", ...range };
}

/** Returns what a schema says of itself; nothing of those inside it. */
export const ownMeta = (schema: z.ZodType) => (z.globalRegistry.get(schema) ?? {}) as Partial<ParameterMeta>;

/** Each word with its meaning. A word of digits may stand without quotation marks. */
function oneOfWords(words: Readonly<Record<string, string>>): JsonSchema {
  return {
    oneOf: Object.entries(words).flatMap(([word, meaning]) =>
      asTyped(word).map((typed) => ({ const: typed, ...(meaning === word ? {} : { description: meaning }) })),
    ),
  };
}

/** Returns a word as text, and as a number where YAML reads it as one. */
const asTyped = (word: string): (string | number)[] => (String(Number(word)) === word ? [word, Number(word)] : [word]);

/** Returns in words what a value is: meaning, unit, range and default. */
export function described(schema: z.ZodType): string | undefined {
  const { description, unit = "", range, table } = metaOf(schema);
  if (description === "") return undefined;
  const allowed = [range, unit].filter((part) => part !== undefined && part !== "").join(" ");
  const rows = table === undefined ? "" : ` (a row of tramwright stock ${table}, or { row: ..., <what you measured> })`;
  return `${description}${allowed === "" ? "" : ` (${allowed})`}${rows}`;
}

/** Returns the schema of a quantity: a number, or text with a unit. */
export function quantitySchema(kind: Kind): JsonSchema {
  const description = `a ${kind} in ${INSIDE[kind]}, or text with a unit: ${shownUnitsOf(kind).join(", ")}`;
  return { description, type: ["number", "string"], pattern: quantityPattern(kind) };
}

/** Returns the schema of a bought item: the key of a row, or a map with what differs from it. */
export function itemSchema({ item, fields, rows, name }: Table, refer: Refer): JsonSchema {
  const keys = rows.map(({ key }) => key);
  const row = { anyOf: [{ enum: keys.flatMap(asTyped) }, { type: "string", pattern: anyCase(keys) }] };
  const names = Object.keys(fields);
  const properties = Object.fromEntries(
    Object.entries(fields).map(([key, { meaning, unit }]) => {
      const words = rows.some(({ values }) => typeof values[key] === "string");
      const description = `${meaning}${unit === "" ? "" : ` (${unit})`}`;
      return [key, { description, ...fieldKeywords(unit, words, refer) }];
    }),
  );
  const measured = {
    description: "whether what is stated here was measured on the item in hand, or a list of what was",
    anyOf: [{ type: "boolean" }, { type: "array", items: { enum: names } }],
  };
  const copied = {
    description:
      "fields that stand here as the row has them, stated by nobody: written into presets that travel in parts",
    anyOf: [{ const: false }, { type: "array", items: { enum: names } }],
  };
  const own = { description: `the row of tramwright stock ${name} it is most like`, ...row };
  const map = {
    type: "object",
    properties: { row: own, measured, copied, ...properties },
    additionalProperties: false,
    anyOf: [asked(["row"]), asked(names)],
  };
  return { description: `a ${item}: a row of tramwright stock ${name}, or a map`, anyOf: [...row.anyOf, map] };
}

const asked = (names: readonly string[]): JsonSchema => ({
  properties: Object.fromEntries(names.map((name) => [name, {}])),
  required: [...names],
});

function fieldKeywords(unit: string, words: boolean, refer: Refer): JsonSchema {
  if (words) return { type: ["string", "number"] };
  const kind = (Object.keys(INSIDE) as Kind[]).find((one) => INSIDE[one] === unit);
  return kind === undefined ? { type: ["number", "string"], pattern: NUMBER_PATTERN } : { allOf: [refer(kind)] };
}

/** Rows are found in any mix of capitals, and between blanks. */
function anyCase(keys: readonly string[]): string {
  const each = keys.map((key) =>
    key
      .replace(/[.*+?^${}()|[\]\\/]/g, (sign) => `\\${sign}`)
      .replace(/[a-z]/gi, (letter) => `[${letter.toLowerCase()}${letter.toUpperCase()}]`),
  );
  return String.raw`^\s*(?:${each.join("|")})\s*$`;
}
