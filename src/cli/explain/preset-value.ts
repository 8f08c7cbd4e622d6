import { tidy } from "../../core/rounding.ts";

/** Words that YAML reads as something else than text, and signs that would end or begin something in a flow map. */
const PLAIN = /^[A-Za-z]([A-Za-z0-9 .+/_-]*[A-Za-z0-9.+/_-])?$/;
/** A size and words: no number begins like that. */
const SIZED = /^\d[A-Za-z0-9./x]* [A-Za-z0-9 .+/_-]*[A-Za-z0-9]$/;
const RESERVED = /^(true|false|null|yes|no|on|off)$/i;

/** Returns a value as a preset would hold it, on one line. A bought item is its row. */
export function presetValue(value: unknown): string {
  if (typeof value === "number") return String(tidy(value));
  if (typeof value === "string") return isPlain(value) ? value : JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(presetValue).join(", ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  if ("key" in value && "measured" in value) return presetValue(value.key);
  const pairs = Object.entries(value).map(([name, one]) => `${name}: ${presetValue(one)}`);
  return pairs.length === 0 ? "{}" : `{ ${pairs.join(", ")} }`;
}

const isPlain = (text: string) =>
  (PLAIN.test(text) && !RESERVED.test(text)) || (SIZED.test(text) && /[a-z]/i.test(text));
