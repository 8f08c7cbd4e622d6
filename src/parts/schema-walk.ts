import * as z from "zod";

type Steps = readonly PropertyKey[];

/** Returns the value at a path; undefined where there is none. */
export function valueAt(data: unknown, path: Steps): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null && Object.hasOwn(value, step)
        ? (value as Record<PropertyKey, unknown>)[step]
        : undefined,
    data,
  );
}

/** Returns the schema of the value at a path; undefined where the schema does not look that deep. */
export function schemaAt(schema: z.ZodType, path: Steps): z.ZodType | undefined {
  return path.reduce<z.ZodType | undefined>((at, step) => (at === undefined ? undefined : inside(at, step)), schema);
}

function inside(schema: z.ZodType, step: PropertyKey): z.ZodType | undefined {
  const own = bare(schema);
  if (own instanceof z.ZodObject) return (own.shape as Record<PropertyKey, z.ZodType>)[step];
  if (own instanceof z.ZodArray) return own.element as z.ZodType;
  if (own instanceof z.ZodRecord) return own.valueType as z.ZodType;
  return own instanceof z.ZodTuple ? (own.def.items[Number(step)] as z.ZodType) : undefined;
}

/** Returns the schema without the defaults and optionals round it. */
export function bare(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault || schema instanceof z.ZodOptional
    ? bare(schema.unwrap() as z.ZodType)
    : schema;
}

/** Returns the keys that a map at a path may have; none where it is no map. */
export function keysAt(schema: z.ZodType, path: Steps): string[] {
  const at = schemaAt(schema, path);
  const own = at === undefined ? undefined : bare(at);
  return own instanceof z.ZodObject ? Object.keys(own.shape) : [];
}
