import * as z from "zod";
import { complain, type ParameterMeta, presented } from "./complain.ts";
import { type Item, itemOf } from "./item.ts";
import { nearest } from "./nearest.ts";
import { NUMBER, SETTINGS, TEXT } from "./plain-schemas.ts";
import { INSIDE, type Kind, type Reading, readQuantity } from "./quantity.ts";
import { tidy } from "./rounding.ts";
import { findRow, type Table, type Values } from "./table.ts";

function overlay<V extends Values>(table: Table<V>, typed: Record<string, unknown>, ctx: z.RefinementCtx): Item<V> {
  const { row: key, measured, copied, ...own } = typed;
  const named = typeof key === "string" || (typeof key === "number" && Number.isFinite(key));
  const base = named ? findRow(table, String(key)) : undefined;
  if (key !== undefined && base === undefined)
    return unknownRow(table, named ? String(key) : presented(key), ctx, ["row"]);
  const fields = Object.keys(table.fields);
  const values: Record<string, number | string> = { ...base?.values };
  for (const [name, value] of Object.entries(own)) {
    const field = table.fields[name];
    if (field === undefined) {
      const set = nearest(name, fields) ?? `one of ${fields.join(", ")}`;
      ctx.addIssue({ code: "custom", path: [name], message: `a ${table.item} has no ${name}`, params: { set } });
    } else values[name] = readField(table, name, value, ctx);
  }
  const missing = fields.filter((name) => !(name in values));
  if (missing.length > 0) {
    return complain(ctx, `this ${table.item} lacks ${missing.join(", ")}`, { set: "row: with a known key" });
  }
  const taken = listed(copied, fields, COPIED, ctx);
  const stated = Object.keys(own).filter((name) => !taken.includes(name));
  const list = measured === true ? stated : listed(measured, fields, MEASURED, ctx);
  const item = key === undefined ? `own ${table.item}` : (base?.key ?? "");
  return { key: item, values: values as V, row: base, measured: list, stated };
}

/** What is said of a list of fields that is none. */
interface FieldList {
  readonly key: "measured" | "copied";
  readonly strange: string;
  readonly takes: string;
  readonly set: string;
}

const MEASURED: FieldList = {
  key: "measured",
  strange: "is not a size that can be measured here",
  takes: "true nor false nor a list",
  set: "measured: true, or a list of the fields that were measured",
};
const COPIED: FieldList = {
  key: "copied",
  strange: "is not a field that can be copied here",
  takes: "false nor a list",
  set: "copied: a list of the fields that stand here as the row has them",
};

/** Returns the fields of a list; none where there is no list. */
function listed(typed: unknown, fields: string[], { key, ...words }: FieldList, ctx: z.RefinementCtx): string[] {
  if (typed === undefined || typed === false) return [];
  if (Array.isArray(typed)) {
    const strange = typed.find((name) => !fields.includes(String(name)));
    if (strange === undefined) return typed.map(String);
    const set = nearest(String(strange), fields) ?? `some of ${fields.join(", ")}`;
    complain(ctx, `${presented(strange)} ${words.strange}`, { set }, [key]);
  } else complain(ctx, `it is ${presented(typed)}, neither ${words.takes}`, { set: words.set }, [key]);
  return [];
}

/** Returns a field as its table holds it, number or text; anything else is complained of. */
function readField<V extends Values>(table: Table<V>, name: string, value: unknown, ctx: z.RefinementCtx) {
  const unit = table.fields[name]?.unit ?? "";
  const words = table.rows.some((row) => typeof row.values[name] === "string");
  if (words && (typeof value === "string" || typeof value === "number")) return String(value);
  const kind = (Object.keys(INSIDE) as Kind[]).find((candidate) => INSIDE[candidate] === unit);
  const reading = words ? undefined : fieldNumber(value, kind);
  if (reading !== undefined && "value" in reading) return withinReach(table, name, reading.value, ctx);
  const takes = words ? "text" : `a number${unit === "" ? "" : ` in ${unit}`}`;
  const { wrong, set } = reading ?? { wrong: `it is ${presented(value)} and takes ${takes}`, set: takes };
  ctx.addIssue({ code: "custom", path: [name], message: wrong, params: { set } });
  return Number.NaN;
}

/** How many times as large as all that are known a bought item may be. Ours: nothing that is sold is larger. */
const REACH = 10;

/** Returns the number, complained of where no such item can be: a bearing of a kilometre has no end of facets. */
function withinReach<V extends Values>(table: Table<V>, name: string, value: number, ctx: z.RefinementCtx): number {
  const known = table.rows.map((row) => Math.abs(Number(row.values[name] ?? 0)));
  const most = tidy(Math.max(100, ...known) * REACH);
  if (Math.abs(value) <= most) return value;
  const unit = table.fields[name]?.unit ?? "";
  const message = `${value}${unit === "" ? "" : ` ${unit}`} is beyond all that is sold`;
  ctx.addIssue({
    code: "custom",
    path: [name],
    message,
    params: { set: `${most} ${unit}`.trimEnd().concat(" or less") },
  });
  return Number.NaN;
}

function fieldNumber(value: unknown, kind: Kind | undefined): Reading | undefined {
  if (typeof value === "string" && kind !== undefined) return readQuantity(value, kind);
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  return typeof number === "number" && Number.isFinite(number) ? { value: number } : undefined;
}

function unknownRow<V extends Values>(table: Table<V>, key: string, ctx: z.RefinementCtx, path: string[] = []): never {
  const keys = table.rows.map((row) => row.key);
  // Tr8x1,5 inside brackets is Tr8x1 and a 5; 20x40 goes on with its slot.
  const longer = [" ", "."]
    .map((next) => key.trim().toLowerCase() + next)
    .flatMap((start) => keys.filter((one) => one.toLowerCase().startsWith(start)))[0];
  const set = longer ?? nearest(key, keys) ?? `one of ${keys.slice(0, 12).join(", ")}${keys.length > 12 ? " ..." : ""}`;
  return complain(ctx, `${key} is not in the table of ${table.name}`, { set }, path);
}

/** The table of each schema of a bought item. */
export const TABLE_OF = z.registry<{ readonly table: Table }>();

/**
 * A bought item: the key of a row, or a map with `row` and the fields that differ from it, and `measured: true` (or a
 * list of fields) when those were measured on the item in hand. `copied` lists fields that nobody stated: a preset that
 * travels in a printed part carries them, so that it makes the same part when a later table has other values.
 */
export function hardware<V extends Values>(table: Table<V>, meaning: string) {
  return z
    .union(
      [TEXT, NUMBER, SETTINGS],
      `expected a ${table.item}: a row of stock ${table.name}, or { row: ..., <field>: ... }`,
    )
    .transform((typed, ctx): Item<V> => {
      if (typeof typed === "object") return overlay(table, typed, ctx);
      const found = findRow(table, String(typed));
      return found === undefined ? unknownRow(table, String(typed), ctx) : itemOf(found);
    })
    .register(TABLE_OF, { table: table as unknown as Table })
    .register(z.globalRegistry, {
      symbol: "",
      unit: "",
      description: meaning,
      table: table.name,
    } satisfies ParameterMeta);
}
