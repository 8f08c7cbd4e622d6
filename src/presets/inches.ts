import * as z from "zod";
import { TABLES } from "../catalogue/index.ts";
import { metaOf } from "../core/parameter.ts";
import { readQuantity } from "../core/quantity.ts";
import type { Table } from "../core/table.ts";
import { FAMILIES } from "../parts/index.ts";
import { bare } from "../parts/schema-walk.ts";

/**
 * Returns the data of a file with `in` behind every length that was written without a unit; nothing else changes. What
 * a length is the schema says: its unit is mm. Blocks of a family's parameters are read with the family's schema,
 * fields of bought items with their table.
 */
export function inInches(schema: z.ZodType, data: unknown): unknown {
  const own = bare(schema);
  const { unit, table, family } = metaOf(schema);
  if (typeof data !== "object" || data === null) return unit === "mm" ? inch(data) : data;
  if (family !== undefined) return insideBlock(family, data);
  if (table !== undefined) return insideItem(table, data);
  if (own instanceof z.ZodObject) return entries(data, (key) => (own.shape as Record<string, z.ZodType>)[key]);
  if (own instanceof z.ZodRecord) return entries(data, () => own.valueType as z.ZodType);
  if (own instanceof z.ZodArray) return list(data, () => own.element as z.ZodType);
  if (own instanceof z.ZodTuple) return list(data, (index) => own.def.items[index] as z.ZodType | undefined);
  return data;
}

/** Bare numbers, also as text (`1 1/4`), become inches; what has a unit, or is no number, stays. */
function inch(value: unknown): unknown {
  if (typeof value !== "number" && typeof value !== "string") return value;
  const text = `${value} in`;
  return "value" in readQuantity(text, "length") ? text : value;
}

function entries(data: object, schemaOf: (key: string) => z.ZodType | undefined): unknown {
  if (Array.isArray(data)) return data;
  const converted = Object.entries(data).map(([key, value]) => {
    const schema = schemaOf(key);
    return [key, schema === undefined ? value : inInches(schema, value)];
  });
  return Object.fromEntries(converted);
}

function list(data: object, schemaOf: (index: number) => z.ZodType | undefined): unknown {
  if (!Array.isArray(data)) return data;
  return data.map((value, index) => {
    const schema = schemaOf(index);
    return schema === undefined ? value : inInches(schema, value);
  });
}

function insideBlock(name: string, data: object): unknown {
  const family = FAMILIES.find((one) => one.name === name);
  return family === undefined ? data : entries(data, (key) => (family.schema.shape as Record<string, z.ZodType>)[key]);
}

function insideItem(name: string, data: object): unknown {
  const table: Table | undefined = TABLES.find((one) => one.name === name);
  if (table === undefined || Array.isArray(data)) return data;
  return Object.fromEntries(
    Object.entries(data).map(([key, value]) => [key, table.fields[key]?.unit === "mm" ? inch(value) : value]),
  );
}
