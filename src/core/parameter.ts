import * as z from "zod";
import { type Item, itemOf } from "./item.ts";
import { nearest } from "./nearest.ts";
import { INSIDE, type Kind, type Reading, readQuantity } from "./quantity.ts";
import { findRow, type Table, type Values } from "./table.ts";
import type { Unit } from "./unit.ts";

// A schema reads a handful of files in one run: compiling its reader first costs more than it saves.
z.config({ jitless: true });

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

/** Returns a value as a message shows it: short, and text as text. */
export function presented(value: unknown): string {
  if (value === undefined || value === null) return "empty";
  if (typeof value === "string") return JSON.stringify(value.length > 40 ? `${value.slice(0, 37)}...` : value);
  if (typeof value === "number" && !Number.isFinite(value)) return "no number";
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "a block of keys" : String(value);
}

function quantity(kind: Kind, spec: Spec) {
  const unit = INSIDE[kind];
  const range = `${spec.min} to ${spec.max}`;
  return z
    .union([z.number(), z.string()], `expected a ${kind} from ${range} ${unit}, a number or text with a unit`)
    .transform((typed, ctx): number => {
      const reading = typeof typed === "number" ? { value: typed } : readQuantity(typed, kind);
      if ("wrong" in reading) {
        return complain(ctx, reading.wrong, {
          set: reading.anything ? `a ${kind} from ${range} ${unit}` : reading.set,
        });
      }
      const { value } = reading;
      if (value < spec.min || value > spec.max || !Number.isFinite(value)) {
        const limit = value < spec.min ? spec.min : spec.max;
        const meant = typeof typed === "number" ? "" : ` (${Number(value.toPrecision(6))} ${unit})`;
        const says = `${spec.meaning} is ${typed}${meant}, outside ${range} ${unit}`;
        return complain(ctx, says, { set: `a value from ${range} ${unit}`, found: value, limit, unit, why: BEYOND });
      }
      return value;
    })
    .register(z.globalRegistry, {
      symbol: spec.symbol,
      unit,
      description: spec.meaning,
      range,
    } satisfies ParameterMeta);
}

export const length = (spec: Spec) => quantity("length", spec);
export const angle = (spec: Spec) => quantity("angle", spec);
export const force = (spec: Spec) => quantity("force", spec);
export const rate = (spec: Spec) => quantity("rate", spec);
export const torque = (spec: Spec) => quantity("torque", spec);
export const temperature = (spec: Spec) => quantity("temperature", spec);
export const mass = (spec: Spec) => quantity("mass", spec);
export const power = (spec: Spec) => quantity("power", spec);

/** A whole number, or any number without a unit when `whole` is false. */
export function plainNumber(spec: Spec & { readonly whole?: boolean }) {
  const range = `${spec.min} to ${spec.max}`;
  return z
    .number(`expected a number from ${range}`)
    .transform((value, ctx): number => {
      const whole = spec.whole ?? true;
      if (value < spec.min || value > spec.max || (whole && !Number.isInteger(value))) {
        const kind = whole ? "a whole number" : "a number";
        const says = `${spec.meaning} is ${value}, not ${kind} from ${range}`;
        const beyond = value < spec.min ? { limit: spec.min } : value > spec.max ? { limit: spec.max } : {};
        return complain(ctx, says, { set: `${kind} from ${range}`, found: value, ...beyond, why: BEYOND });
      }
      return value;
    })
    .register(z.globalRegistry, {
      symbol: spec.symbol,
      unit: "",
      description: spec.meaning,
      range,
    } satisfies ParameterMeta);
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
    .register(z.globalRegistry, { symbol, unit: "", description: meaning, words } satisfies ParameterMeta);
}

export function flag(symbol: string, meaning: string) {
  return z.boolean("expected true or false").register(z.globalRegistry, {
    symbol,
    unit: "",
    description: meaning,
    words: { true: "yes", false: "no" },
  } satisfies ParameterMeta);
}

/** A short text that may be engraved: letters, digits, blank and . - + only. */
export function label(symbol: string, meaning: string, longest = 16) {
  return z
    .string("expected a short text in quotation marks")
    .transform((text, ctx): string => {
      if (text.length <= longest && /^[A-Za-z0-9 .+-]*$/.test(text)) return text;
      return complain(ctx, `${presented(text)} cannot be engraved`, {
        set: `at most ${longest} of the letters A to Z, digits, blank, . - +`,
      });
    })
    .register(z.globalRegistry, { symbol, unit: "", description: meaning } satisfies ParameterMeta);
}

function overlay<V extends Values>(table: Table<V>, typed: Record<string, unknown>, ctx: z.RefinementCtx): Item<V> {
  const { row: key, measured, ...own } = typed;
  const base = key === undefined ? undefined : findRow(table, String(key));
  if (key !== undefined && base === undefined) return unknownRow(table, String(key), ctx, ["row"]);
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
  const list = measuredFields(measured, Object.keys(own), fields, ctx);
  const item = key === undefined ? `own ${table.item}` : (base?.key ?? "");
  return { key: item, values: values as V, row: base, measured: list, stated: Object.keys(own) };
}

/** Returns the fields that were measured: all that are stated, none, or those listed. */
function measuredFields(typed: unknown, stated: string[], fields: string[], ctx: z.RefinementCtx): string[] {
  if (typed === undefined || typed === false) return [];
  if (typed === true) return stated;
  if (Array.isArray(typed)) {
    const strange = typed.find((name) => !fields.includes(String(name)));
    if (strange === undefined) return typed.map(String);
    const set = nearest(String(strange), fields) ?? `some of ${fields.join(", ")}`;
    return complain(ctx, `${presented(strange)} is not a size that can be measured here`, { set }, ["measured"]);
  }
  const set = "measured: true, or a list of the fields that were measured";
  return complain(ctx, `it is ${presented(typed)}, neither true nor false nor a list`, { set }, ["measured"]);
}

/** Returns a field as its table holds it, number or text; anything else is complained of. */
function readField<V extends Values>(table: Table<V>, name: string, value: unknown, ctx: z.RefinementCtx) {
  const unit = table.fields[name]?.unit ?? "";
  const words = table.rows.some((row) => typeof row.values[name] === "string");
  if (words && (typeof value === "string" || typeof value === "number")) return String(value);
  const kind = (Object.keys(INSIDE) as Kind[]).find((candidate) => INSIDE[candidate] === unit);
  const reading = words ? undefined : fieldNumber(value, kind);
  if (reading !== undefined && "value" in reading) return reading.value;
  const takes = words ? "text" : `a number${unit === "" ? "" : ` in ${unit}`}`;
  const { wrong, set } = reading ?? { wrong: `it is ${presented(value)} and takes ${takes}`, set: takes };
  ctx.addIssue({ code: "custom", path: [name], message: wrong, params: { set } });
  return Number.NaN;
}

function fieldNumber(value: unknown, kind: Kind | undefined): Reading | undefined {
  if (typeof value === "string" && kind !== undefined) return readQuantity(value, kind);
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  return typeof number === "number" && Number.isFinite(number) ? { value: number } : undefined;
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
    .union(
      [z.string(), z.number(), z.record(z.string(), z.unknown())],
      `expected a ${table.item}: a row of stock ${table.name}, or { row: ..., <field>: ... }`,
    )
    .transform((typed, ctx): Item<V> => {
      if (typeof typed === "object") return overlay(table, typed, ctx);
      const found = findRow(table, String(typed));
      return found === undefined ? unknownRow(table, String(typed), ctx) : itemOf(found);
    })
    .register(z.globalRegistry, {
      symbol: "",
      unit: "",
      description: meaning,
      table: table.name,
    } satisfies ParameterMeta);
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
