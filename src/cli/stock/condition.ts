import { INSIDE, type Kind, readQuantity } from "../../core/quantity.ts";
import type { Field } from "../../core/table.ts";
import { trouble } from "../io.ts";

type Value = number | string | undefined;

const EQUAL = 1e-6;

const COMPARE: Readonly<Record<string, (value: number, limit: number) => boolean>> = {
  "=": (value, limit) => Math.abs(value - limit) < EQUAL,
  "<": (value, limit) => value < limit - EQUAL,
  "<=": (value, limit) => value <= limit + EQUAL,
  ">": (value, limit) => value > limit + EQUAL,
  ">=": (value, limit) => value >= limit - EQUAL,
};

/**
 * Returns a test of one field's value: "8", "<=8", ">10" or "8..12", numbers with a unit if wanted, or a word.
 * `values` are those in the table: they tell numbers from words. Throws a trouble with what may be written.
 */
export function condition(
  name: string,
  { unit }: Field,
  wanted: string,
  values: readonly Value[],
): (value: Value) => boolean {
  const text = wanted.trim();
  if (values.every((value) => typeof value === "string")) {
    if (/^[<>]|\.\./.test(text)) throw trouble(`${name} holds words, and ${text} compares numbers`);
    const word = text.replace(/^=\s*/, "").toLowerCase();
    return (value) => String(value).toLowerCase() === word;
  }
  const read = (part: string) => numberIn(name, unit, part);
  const between = /^(.*[^.])\.\.(.+)$/.exec(text);
  if (between !== null) {
    const [from, to] = [read(between[1] ?? ""), read(between[2] ?? "")].sort((a, b) => a - b) as [number, number];
    return (value) => typeof value === "number" && value >= from - EQUAL && value <= to + EQUAL;
  }
  const [, sign = "=", rest = ""] = /^(<=|>=|<|>|=)?(.*)$/.exec(text) ?? [];
  if (sign === "=" && values.includes(rest.trim())) return (value) => value === rest.trim();
  const limit = read(rest);
  return (value) => typeof value === "number" && (COMPARE[sign]?.(value, limit) ?? false);
}

/** Returns the number in the table's unit. */
function numberIn(name: string, unit: Field["unit"], text: string): number {
  const kind = (Object.keys(INSIDE) as Kind[]).find((one) => INSIDE[one] === unit);
  const reading = readQuantity(text, kind ?? "length");
  // A bare number is in the unit of the column, whatever that is.
  const bare = Number(text.trim());
  if (kind === undefined && text.trim() !== "" && Number.isFinite(bare)) return bare;
  if ("value" in reading && kind !== undefined) return reading.value;
  const like = unit === "" ? "a number" : `a number in ${unit}`;
  throw trouble(`${name} is ${like}, not ${text.trim() || "nothing"}; write 8, '<=8', '>10' or 8..12`);
}
