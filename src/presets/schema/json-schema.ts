import * as z from "zod";
import { LIMITS } from "../../core/parameter.ts";
import type { Kind } from "../../core/quantity.ts";
import type { Table } from "../../core/table.ts";
import { FAMILIES } from "../../parts/index.ts";
import { isItem } from "../../parts/unmeasured.ts";
import { described, itemSchema, keywordsOf, ownMeta, quantitySchema } from "./keywords.ts";

/** A JSON Schema, draft-07, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

interface Node {
  readonly zodSchema: z.core.$ZodTypes;
  readonly jsonSchema: Record<string, unknown>;
}

/** What a schema refers to: definitions by their names, in the order they are met. */
interface Definitions {
  readonly made: Map<string, JsonSchema>;
  readonly tables: Map<Table, string>;
}

/** Returns the JSON Schema of what a schema reads, with everything that it refers to among its definitions. */
export function jsonSchemaOf(schema: z.ZodType, title: string): JsonSchema {
  const definitions: Definitions = { made: new Map(), tables: new Map() };
  const { $schema, ...body } = convert(schema, definitions);
  return { $schema, title, ...body, definitions: Object.fromEntries(definitions.made) };
}

function convert(schema: z.ZodType, definitions: Definitions): Record<string, unknown> {
  const override = (node: Node) => complete(node, definitions);
  // Our own metadata is told in words; as keywords of its own nobody would know it.
  const metadata = z.registry<Record<string, unknown>>();
  return z.toJSONSchema(schema, { target: "draft-7", io: "input", metadata, override }) as Record<string, unknown>;
}

/** Puts in what the library cannot know: what our code asks for behind the shape, meanings and defaults. */
function complete({ zodSchema, jsonSchema }: Node, definitions: Definitions): void {
  const schema = zodSchema as unknown as z.ZodType;
  const own = keywordsOf(schema, (what) => reference(what, definitions)) ?? blockOf(schema, definitions);
  if (own !== undefined) {
    for (const key of Object.keys(jsonSchema)) delete jsonSchema[key];
    Object.assign(jsonSchema, own);
  }
  const most = LIMITS.get(schema)?.most;
  if (most !== undefined) jsonSchema.maxProperties = most;
  const words = described(schema);
  if (words !== undefined) jsonSchema.description = words;
  if (schema instanceof z.ZodDefault) jsonSchema.default = asTyped(schema.def.defaultValue);
}

const PLACE = "#/definitions/";

function reference(what: Table | Kind, { made, tables }: Definitions): { readonly $ref: string } {
  if (typeof what === "string") {
    if (!made.has(what)) made.set(what, quantitySchema(what));
    return { $ref: `${PLACE}${what}` };
  }
  const known = tables.get(what);
  if (known !== undefined) return { $ref: `${PLACE}${known}` };
  // Two tables have one name where one has more rows than the other.
  const twins = [...tables.keys()].filter(({ name }) => name === what.name).length;
  const name = `${what.name.replaceAll(" ", "-")}${twins === 0 ? "" : `-${twins + 1}`}`;
  tables.set(what, name);
  made.set(
    name,
    itemSchema(what, (kind) => reference(kind, { made, tables })),
  );
  return { $ref: `${PLACE}${name}` };
}

/** A block of a family's parameters in a plan holds any of them: what it lacks the plan derives. */
function blockOf(schema: z.ZodType, definitions: Definitions): JsonSchema | undefined {
  const family = FAMILIES.find(({ name }) => name === ownMeta(schema).family);
  if (family === undefined) return undefined;
  const { name, title } = family;
  if (!definitions.made.has(name)) {
    const { $schema: _, required: __, ...body } = convert(family.schema, definitions);
    definitions.made.set(name, { title: `parameters: ${title}`, ...body });
  }
  return { allOf: [{ $ref: `${PLACE}${name}` }] };
}

/** Returns a default as a preset would hold it: a bought item is the key of its row. */
function asTyped(value: unknown): unknown {
  if (isItem(value)) return value.key;
  if (Array.isArray(value)) return value.map(asTyped);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, asTyped(one)]));
}
