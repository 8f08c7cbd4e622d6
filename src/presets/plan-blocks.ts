import * as z from "zod";
import type { Path } from "../core/diagnostic.ts";
import { metaOf } from "../core/parameter.ts";
import type { AnyFamily } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { bare } from "../parts/schema-walk.ts";

/** A block of a family's parameters that stands in a plan. */
export interface Block {
  readonly family: AnyFamily;
  readonly path: Path;
  readonly data: Readonly<Record<string, unknown>>;
}

/** Returns every block of parameters in the data of a plan; the schema's metadata says whose they are. */
export function blocksOf(schema: z.ZodType, data: unknown, path: Path = []): Block[] {
  if (typeof data !== "object" || data === null || Array.isArray(data)) return [];
  const family = FAMILIES.find(({ name }) => name === metaOf(schema).family);
  if (family !== undefined) return [{ family, path, data: data as Block["data"] }];
  const own = bare(schema);
  const schemaOf = (key: string): z.ZodType | undefined => {
    if (own instanceof z.ZodObject) return (own.shape as Record<string, z.ZodType>)[key];
    return own instanceof z.ZodRecord ? (own.valueType as z.ZodType) : undefined;
  };
  return Object.entries(data).flatMap(([key, value]) => {
    const schema = schemaOf(key);
    return schema === undefined ? [] : blocksOf(schema, value, [...path, key]);
  });
}
