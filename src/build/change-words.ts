import { metaOf, type ParameterMeta } from "../core/parameter.ts";
import { tidy } from "../core/rounding.ts";
import { canonical } from "./hash.ts";
import type { Request } from "./request.ts";

/** The unit in which the plan has its lengths. */
export type LengthUnit = "mm" | "in";

/** More changes than these are counted: a part is printed again for the first of them as well. */
const MOST = 3;

/** A bought item inside parameters: a row, with what was measured laid over it. */
interface ItemLike {
  readonly key: string;
  readonly values: Readonly<Record<string, unknown>>;
}

/**
 * Returns in words what differs between two requests of one family, at these keys: each parameter as it was and as it
 * is, such as "belt plane 9.5 -> 13.5 mm".
 */
export function changeWords(was: Request, is: Request, keys: readonly string[], units: LengthUnit): string {
  const told = keys.slice(0, MOST).map((key) => {
    const meta = metaOf(is.family.schema.shape[key] as Parameters<typeof metaOf>[0]);
    return oneChange(nameOf(key, meta.description), meta, [was, is], key, units);
  });
  const more = keys.length - told.length;
  return [...told, ...(more > 0 ? [`${more} more`] : [])].join("; ");
}

/** Returns what a parameter is called in a sentence: its key as words, or what it means where that is one word. */
function nameOf(key: string, meaning: string): string {
  const words = key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.includes(" ") || meaning === "" ? words : meaning.replace(/;.*$/, "");
}

function oneChange(
  meaning: string,
  meta: ParameterMeta,
  [was, is]: readonly [Request, Request],
  key: string,
  units: LengthUnit,
): string {
  const [old, now] = [was.parameters[key], is.parameters[key]];
  const lengths = meta.unit === "mm" && units === "in";
  const unit = lengths ? "in" : meta.unit;
  const say = (value: unknown) => valueWords(value, lengths, meta.words);
  const [before, after] = [say(old), say(now)];
  if (before === undefined || after === undefined) return `${meaning} changed`;
  if (before === after) return `${meaning}: ${measuresWords(old, now, units)}`;
  return `${meaning} ${before} -> ${after}${unit === "" ? "" : ` ${unit}`}`;
}

/** Returns a value in few words; undefined where it takes many. */
function valueWords(value: unknown, lengths: boolean, words: ParameterMeta["words"]): string | undefined {
  if (value === undefined) return "none";
  if (typeof value === "number")
    return String(lengths ? tidy(Number((value / 25.4).toFixed(4))) : tidy(Number(value.toFixed(3))));
  if (typeof value === "boolean") return words?.[String(value)] ?? String(value);
  if (typeof value === "string") return value === "" ? "none" : value;
  return isItem(value) ? value.key : undefined;
}

const isItem = (value: unknown): value is ItemLike =>
  typeof value === "object" && value !== null && "key" in value && "values" in value;

/** Returns what was measured otherwise on two items of one row. */
function measuresWords(old: unknown, now: unknown, units: LengthUnit): string {
  if (!isItem(old) || !isItem(now)) return "changed";
  const fields = Object.keys(now.values).filter((name) => canonical(old.values[name]) !== canonical(now.values[name]));
  const told = fields.slice(0, MOST).map((name) => {
    const say = (value: unknown) => valueWords(value, false, undefined) ?? "";
    return `${name} ${say(old.values[name])} -> ${say(now.values[name])}`;
  });
  return `${now.key}, ${told.length === 0 ? "measured otherwise" : told.join(", ")}${units === "in" ? " mm" : ""}`;
}
