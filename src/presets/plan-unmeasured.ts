import * as z from "zod";
import { defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { metaOf } from "../core/parameter.ts";
import { tidy } from "../core/rounding.ts";
import { bare } from "../parts/schema-walk.ts";
import { isItem, typicalItems } from "../parts/unmeasured.ts";
import type { PlacedPart } from "../stage/index.ts";
import { type StagePreset, stageFileSchema } from "./stage-preset.ts";

/**
 * Returns one note of everything that nobody has measured: bought items at the sizes usually sold, those of the parts
 * included, and sizes that the plan leaves at their defaults. None when all is known.
 */
export function planUnmeasured({ plan, data }: StagePreset, parts: readonly PlacedPart[]): Diagnostic[] {
  const items = [...itemsIn(plan), ...parts.flatMap(({ parameters }) => typicalItems(parameters))];
  const sold = unique(items.map(({ name, key }) => `${name} ${key}`));
  const usual = unique(defaultsIn(stageFileSchema, data, ""));
  if (sold.length + usual.length === 0) return [];
  const says = [
    ...(sold.length === 0 ? [] : [`sizes as usually sold, not measured: ${sold.join(", ")}`]),
    ...(usual.length === 0 ? [] : [`not stated, taken as usual: ${usual.join(", ")}`]),
  ].join("; ");
  const set = 'each as measured; of a bought item: { row: "608", width: 6.98, measured: true }';
  return [defect("typical-value-not-measured", { level: "note", path: [], says, set })];
}

const unique = (words: readonly string[]) => [...new Set(words)];

function itemsIn(value: unknown): { readonly name: string; readonly key: string }[] {
  if (typeof value !== "object" || value === null || isItem(value)) return [];
  if (Array.isArray(value)) return value.flatMap(itemsIn);
  return [...typicalItems(value as Record<string, unknown>), ...Object.values(value).flatMap(itemsIn)];
}

/** Returns what the file leaves to the defaults and a tape or scale could tell: `plate.thickness 6.35 mm`. */
function defaultsIn(schema: z.ZodType, data: unknown, name: string): string[] {
  const own = bare(schema);
  if (data === undefined) {
    if (schema instanceof z.ZodPrefault) return defaultsIn(own, schema.def.defaultValue, name);
    const { unit } = metaOf(schema);
    const value: unknown = schema instanceof z.ZodDefault && unit !== "" ? schema.def.defaultValue : undefined;
    return typeof value === "number" ? [`${name} ${tidy(value)} ${unit}`] : [];
  }
  if (typeof data !== "object" || data === null) return [];
  const under = (key: string) => (name === "" ? key : `${name}.${key}`);
  if (own instanceof z.ZodObject) {
    const given = data as Readonly<Record<string, unknown>>;
    return Object.entries(own.shape as Record<string, z.ZodType>).flatMap(([key, one]) =>
      defaultsIn(one, given[key], under(key)),
    );
  }
  // What is left out in one of several things of a kind is told once: `loops tension 15 N`.
  if (own instanceof z.ZodRecord) {
    return Object.values(data).flatMap((one) => defaultsIn(own.valueType as z.ZodType, one, name));
  }
  if (!(own instanceof z.ZodArray) || !Array.isArray(data)) return [];
  return data.flatMap((one) => defaultsIn(own.element as z.ZodType, one, name));
}
