import * as z from "zod";
import { TABLES } from "../catalogue/index.ts";
import { LIMITS } from "../core/parameter.ts";
import { FAMILIES } from "../parts/index.ts";
import { bare } from "../parts/schema-walk.ts";
import { schema } from "./schema/index.ts";

/**
 * Returns the keys under which a plan has lengths: its own, those of the parts' parameters and the fields of bought
 * items. A key that is a number of another kind elsewhere is none of them.
 */
export function lengthKeys(): ReadonlySet<string> {
  const own = [schema, ...FAMILIES.map((family) => family.schema as z.ZodType)].flatMap((one) => numbersIn(one, ""));
  const fields = TABLES.flatMap(({ fields }) =>
    Object.entries(fields).map(([key, { unit }]): Numbered => [key, unit === "mm"]),
  );
  const all = [...own, ...fields];
  const others = new Set(all.flatMap(([key, isLength]) => (isLength ? [] : [key])));
  return new Set(all.flatMap(([key, isLength]) => (isLength && !others.has(key) ? [key] : [])));
}

/** A key with a number, or a list of them, and whether it is a length. */
type Numbered = readonly [key: string, isLength: boolean];

function numbersIn(given: z.ZodType, key: string): Numbered[] {
  const own = bare(given);
  if (own instanceof z.ZodObject)
    return Object.entries(own.shape).flatMap(([name, each]) => numbersIn(each as z.ZodType, name));
  if (own instanceof z.ZodRecord) return numbersIn(own.valueType as z.ZodType, "");
  if (own instanceof z.ZodArray) return numbersIn(own.element as z.ZodType, key);
  if (own instanceof z.ZodTuple) return own.def.items.flatMap((each) => numbersIn(each as z.ZodType, key));
  const limits = LIMITS.get(own);
  return limits?.min === undefined || key === "" ? [] : [[key, limits.kind === "length"]];
}
