import { z } from "zod";
import { nearest } from "./nearest.ts";
import { INSIDE, type Kind, readQuantity } from "./quantity.ts";
import { findRow, type Row, type Table, type Values } from "./table.ts";
import type { Unit } from "./unit.ts";

/** What every parameter says about itself; it travels in the zod schema's metadata. */
export interface ParameterMeta {
  readonly symbol: string;
  readonly unit: Unit;
  readonly description: string;
  /** The range as printed, for numbers. */
  readonly range?: string;
  /** Name of the hardware table, when the parameter is a bought item. */
  readonly table?: string;
  /** The words it may be, with their meaning. */
  readonly words?: Readonly<Record<string, string>>;
}

interface Spec {
  readonly symbol: string;
  readonly meaning: string;
  readonly min: number;
  readonly max: number;
}

/** What a complaint of a schema carries, in its `params`, for the message layer to print. */
export interface ComplaintParams {
  readonly set?: string;
  readonly found?: number;
  readonly limit?: number;
  readonly unit?: Unit;
  readonly why?: string;
}

const BEYOND = "outside this range the rules behind the part, or the print, do not hold";

function complain(ctx: z.RefinementCtx, message: string, params: ComplaintParams, path: string[] = []): never {
  ctx.addIssue({ code: "custom", message, params, path });
  return z.NEVER;
}

function quantity(kind: Kind, spec: Spec) {
  const unit = INSIDE[kind];
  const range = `${spec.min} to ${spec.max}`;
  return z
    .union([z.number(), z.string()], `expected a ${kind}: a number in ${unit}, or text with a unit`)
    .transform((typed, ctx): number => {
      const reading = typeof typed === "number" ? { value: typed } : readQuantity(typed, kind);
      if ("wrong" in reading) return complain(ctx, reading.wrong, { set: reading.set });
      const { value } = reading;
      if (value < spec.min || value > spec.max || !Number.isFinite(value)) {
        const limit = value < spec.min ? spec.min : spec.max;
        const meant = typeof typed === "number" ? "" : ` (${value} ${unit})`;
        const says = `${spec.meaning} is ${typed}${meant}, outside ${range} ${unit}`;
        return complain(ctx, says, { set: `a value from ${range} ${unit}`, found: value, limit, unit, why: BEYOND });
      }
      return value;
    })
    .meta({ symbol: spec.symbol, unit, description: spec.meaning, range } satisfies ParameterMeta);
}

export const length = (spec: Spec) => quantity("length", spec);
export const angle = (spec: Spec) => quantity("angle", spec);
export const force = (spec: Spec) => quantity("force", spec);
export const rate = (spec: Spec) => quantity("rate", spec);
export const torque = (spec: Spec) => quantity("torque", spec);
export const temperature = (spec: Spec) => quantity("temperature", spec);

/** A whole number, or any number without a unit when `whole` is false. */
export function plainNumber(spec: Spec & { readonly whole?: boolean }) {
  const range = `${spec.min} to ${spec.max}`;
  return z
    .number(`expected a number from ${range}`)
    .transform((value, ctx): number => {
      const whole = spec.whole ?? true;
      if (value < spec.min || value > spec.max || (whole && !Number.isInteger(value))) {
        const limit = value < spec.min ? spec.min : spec.max;
        const kind = whole ? "a whole number" : "a number";
        const says = `${spec.meaning} is ${value}, not ${kind} from ${range}`;
        return complain(ctx, says, { set: `${kind} from ${range}`, found: value, limit, why: BEYOND });
      }
      return value;
    })
    .meta({ symbol: spec.symbol, unit: "", description: spec.meaning, range } satisfies ParameterMeta);
}

/** One of a few words, each with its meaning. */
export function choice<const Word extends string>(
  symbol: string,
  meaning: string,
  words: Readonly<Record<Word, string>>,
) {
  const known = Object.keys(words) as Word[];
  return z
    .union([z.string(), z.number()], `expected one of ${known.join(", ")}`)
    .transform((typed, ctx): Word => {
      const word = String(typed).trim();
      if ((known as string[]).includes(word)) return word as Word;
      const close = nearest(word, known);
      return complain(ctx, `${word} is not known here`, { set: close ?? `one of ${known.join(", ")}` });
    })
    .meta({ symbol, unit: "", description: meaning, words } satisfies ParameterMeta);
}

export function flag(symbol: string, meaning: string) {
  return z
    .boolean("expected true or false")
    .meta({ symbol, unit: "", description: meaning, words: { true: "yes", false: "no" } } satisfies ParameterMeta);
}

/** A short text that may be engraved: letters, digits, blank and . - + only. */
export function label(symbol: string, meaning: string, longest = 16) {
  return z
    .string("expected a short text in quotation marks")
    .transform((text, ctx): string => {
      if (text.length <= longest && /^[A-Za-z0-9 .+-]*$/.test(text)) return text;
      return complain(ctx, "the text cannot be engraved", {
        set: `at most ${longest} of the letters A to Z, digits, blank, . - +`,
      });
    })
    .meta({ symbol, unit: "", description: meaning } satisfies ParameterMeta);
}

/** A bought item as a part uses it: the row's values with the user's own measurements laid over them. */
export interface Item<V extends Values = Values> {
  readonly key: string;
  readonly values: V;
  /** The row it started from; undefined for an item that is stated whole. */
  readonly row: Row<V> | undefined;
  /** Fields that the user says were measured on the item in hand. */
  readonly measured: readonly string[];
  /** Fields that the user stated, measured or not. */
  readonly stated: readonly string[];
}

/** Returns a catalogue row as an item nobody has measured yet. */
export function itemOf<V extends Values>(row: Row<V>): Item<V> {
  return { key: row.key, values: row.values, row, measured: [], stated: [] };
}

/** What two of the same article may differ by, mm; what measures more apart is another article. common practice */
const SAME = 0.25;

/** Returns what to ask for in a shop: the row's own size where the item in hand measures nearly that. */
export function nominal<V extends Values>({ values, row, measured }: Item<V>): V {
  const near = Object.entries(row?.values ?? {}).filter(([name, usual]) => {
    const own = values[name];
    return measured.includes(name) && typeof own === "number" && Math.abs(own - Number(usual)) <= SAME;
  });
  return { ...values, ...Object.fromEntries(near) };
}

function overlay<V extends Values>(table: Table<V>, typed: Record<string, unknown>, ctx: z.RefinementCtx): Item<V> {
  const { row: key, measured = [], ...own } = typed;
  const base = key === undefined ? undefined : findRow(table, String(key));
  if (key !== undefined && base === undefined) return unknownRow(table, String(key), ctx, ["row"]);
  const fields = Object.keys(table.fields);
  const values: Record<string, number | string> = { ...base?.values };
  for (const [name, value] of Object.entries(own)) {
    const field = table.fields[name];
    if (field === undefined) {
      const set = nearest(name, fields) ?? `one of ${fields.join(", ")}`;
      ctx.addIssue({ code: "custom", path: [name], message: `a ${table.item} has no ${name}`, params: { set } });
    } else values[name] = readField(field.unit, value, name, ctx);
  }
  const missing = fields.filter((name) => !(name in values));
  if (missing.length > 0) {
    return complain(ctx, `this ${table.item} lacks ${missing.join(", ")}`, { set: "row: with a known key" });
  }
  const list = (measured === true ? Object.keys(own) : measured) as string[];
  const item = key === undefined ? `own ${table.item}` : (base?.key ?? "");
  return { key: item, values: values as V, row: base, measured: list, stated: Object.keys(own) };
}

function readField(unit: Unit, value: unknown, name: string, ctx: z.RefinementCtx): number | string {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  const kind = (Object.keys(INSIDE) as Kind[]).find((candidate) => INSIDE[candidate] === unit);
  if (typeof value !== "string" || kind === undefined) return typeof value === "string" ? value : Number.NaN;
  const reading = readQuantity(value, kind);
  if ("value" in reading) return reading.value;
  ctx.addIssue({ code: "custom", path: [name], message: reading.wrong, params: { set: reading.set } });
  return Number.NaN;
}

function unknownRow<V extends Values>(table: Table<V>, key: string, ctx: z.RefinementCtx, path: string[] = []): never {
  const keys = table.rows.map((row) => row.key);
  const set = nearest(key, keys) ?? `one of ${keys.slice(0, 12).join(", ")}${keys.length > 12 ? " ..." : ""}`;
  return complain(ctx, `${key} is not in the table of ${table.name}`, { set }, path);
}

/**
 * A bought item: the key of a row, or a map with `row` and the fields that differ from it, and `measured: true` (or a
 * list of fields) when those were measured on the item in hand.
 */
export function hardware<V extends Values>(table: Table<V>, meaning: string) {
  return z
    .union([z.string(), z.number(), z.record(z.string(), z.unknown())], `expected a ${table.item}`)
    .transform((typed, ctx): Item<V> => {
      if (typeof typed === "object") return overlay(table, typed, ctx);
      const found = findRow(table, String(typed));
      return found === undefined ? unknownRow(table, String(typed), ctx) : itemOf(found);
    })
    .meta({ symbol: "", unit: "", description: meaning, table: table.name } satisfies ParameterMeta);
}

/** Returns what a parameter says about itself, through defaults and optionals. */
export function metaOf(schema: z.ZodType): ParameterMeta {
  const meta = schema.meta() as ParameterMeta | undefined;
  if (meta?.description !== undefined) return meta;
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault || schema instanceof z.ZodOptional) {
    return metaOf(schema.unwrap() as z.ZodType);
  }
  return { symbol: "", unit: "", description: "" };
}
