import * as z from "zod";
import { TABLE_OF } from "../core/hardware.ts";
import type { Item } from "../core/item.ts";
import { metaOf } from "../core/parameter.ts";
import { tidy } from "../core/rounding.ts";
import type { Table } from "../core/table.ts";
import type { AnyFamily } from "./family.ts";
import { GUIDES, ITEM_GUIDES } from "./guides.ts";
import { bare } from "./schema-walk.ts";
import { isItem, isTypical } from "./unmeasured.ts";

/** Something to measure: what the preset has for it, and how it is done. */
export interface ToMeasure {
  /** `bearing: 608` */
  readonly what: string;
  /** `bore 8, outside 22, width 7 mm` */
  readonly takes: string;
  readonly how: string;
}

/**
 * Returns what to measure before a part is printed: bought items that nobody has measured. Of a preset that somebody
 * else wrote also what he has measured on his own, and what depends on his machine.
 */
export function measureFirst(
  family: AnyFamily,
  parameters: Readonly<Record<string, unknown>>,
  foreign: boolean,
): ToMeasure[] {
  const shape = family.schema.shape as Readonly<Record<string, z.ZodType>>;
  const all = Object.entries(shape).flatMap(([key, schema]): ToMeasure[] => {
    const value = parameters[key];
    if (value === undefined) return [];
    const items = (Array.isArray(value) ? value : [value]).filter(isItem);
    if (items.length === 0) return foreign ? quantity(family, key, schema, value) : [];
    return items
      .filter((item) => isTypical(item) || (foreign && isOwn(item)))
      .flatMap((one) => bought(key, schema, one));
  });
  // Two of the same are measured alike.
  return all.filter(({ what }, index) => all.findIndex((one) => one.what === what) === index);
}

const isOwn = ({ row, measured, stated }: Item) => row === undefined || measured.length + stated.length > 0;

function bought(key: string, schema: z.ZodType, { key: row, values }: Item): ToMeasure[] {
  const table = tableOf(schema);
  const how = table === undefined ? undefined : ITEM_GUIDES[table.name];
  if (table === undefined || how === undefined || NO_SIZES.includes(table.name)) return [];
  const sizes = Object.entries(table.fields).flatMap(([field, { unit }]) => {
    const value = values[field];
    return unit === "mm" && typeof value === "number" ? [`${field} ${tidy(value)}`] : [];
  });
  return [{ what: `${key}: ${row}`, takes: `${sizes.join(", ")} mm`, how }];
}

/** Tables of what is bought by name: there is nothing to hold calipers to. */
const NO_SIZES = ["materials", "metals"];

function tableOf(schema: z.ZodType): Table | undefined {
  const own = bare(schema);
  const one = own instanceof z.ZodArray ? bare(own.element as z.ZodType) : own;
  return TABLE_OF.get(one)?.table;
}

const CHOSEN = /^choose/;

/** A quantity that is measured on each machine, or that the preset states without having to. */
function quantity(family: AnyFamily, key: string, schema: z.ZodType, value: unknown): ToMeasure[] {
  const guide = GUIDES[family.name];
  const how = guide?.measure[key];
  if (how === undefined || CHOSEN.test(how) || typeof value !== "number") return [];
  if (!guide?.first.includes(key) && !(schema instanceof z.ZodOptional)) return [];
  const { unit, description } = metaOf(schema);
  return [{ what: `${key}: ${description}`, takes: `${tidy(value)} ${unit}`.trim(), how }];
}
