import { BARS } from "../../catalogue/bars.ts";
import { readQuantity } from "../../core/quantity.ts";
import { findRow } from "../../core/table.ts";

/** What is asked before the plan of a stage is written; lengths in mm. */
export interface Answers {
  readonly name: string;
  readonly units: "mm" | "in";
  readonly screws: 2 | 3 | 4;
  /** The row of the bar that frame and stage are of. */
  readonly bar: string;
  /** Outer width and depth of the frame. */
  readonly frame: readonly [number, number];
  readonly plate: readonly [number, number];
  readonly lift: number;
  readonly loops: 1 | 2;
}

export const USUAL = {
  mm: { frame: "500 x 480", plate: "220 x 200", lift: "200", bar: "20x20 slot 6" },
  in: { frame: "21 x 20", plate: "9 x 8", lift: "8", bar: "1 in" },
} as const;

/** An answer as the plan needs it, or what is wrong with it in words. */
export type Checked<Value> = { readonly value: Value } | { readonly wrong: string };

const HAS_UNIT = /[a-z"'″”“′’‘]/i;

/** Returns a length in mm; a bare number is in the unit of the plan. */
export function lengthIn(text: string, units: "mm" | "in", min: number, max: number): Checked<number> {
  const bare = HAS_UNIT.test(text) ? text : `${text} ${units}`;
  const reading = readQuantity(bare, "length");
  if ("wrong" in reading) return { wrong: `${reading.wrong}; it takes ${reading.set}` };
  const inUnit = (value: number) => (units === "mm" ? `${value} mm` : `${Number((value / 25.4).toPrecision(3))} in`);
  if (reading.value >= min && reading.value <= max) return { value: reading.value };
  return { wrong: `${text} is outside ${inUnit(min)} to ${inUnit(max)}` };
}

/** What a size may be, and how it is spoken of. */
export interface SizeLimits {
  readonly what: string;
  readonly such: string;
  readonly min: number;
  readonly max: number;
}

/** A unit behind the second number alone is meant for both: nobody writes 26 x 22 cm for 26 mm. */
const UNIT_BEHIND = /^([\d\s./-]*\d)\s*[x×*]\s*([\d\s./-]*\d)\s*([a-z]+|["″”“'′’‘])\s*$/i;

/** Returns width and depth: `300 x 250`, `12 in x 10 in`, `26 x 22 cm`. */
export function sizeIn(text: string, units: "mm" | "in", limits: SizeLimits): Checked<readonly [number, number]> {
  const { what, such, min, max } = limits;
  const [, first, second, unit] = UNIT_BEHIND.exec(text) ?? [];
  const [, along = "", across = ""] =
    unit === undefined ? (/^\s*(.+?)\s*[x×*]\s*(.+?)\s*$/i.exec(text) ?? []) : [text, first + unit, second + unit];
  if (along === "") return { wrong: `${text} is no size of a ${what}; it takes width x depth, such as ${such}` };
  if (HAS_UNIT.test(along) && !HAS_UNIT.test(across))
    return { wrong: `${text} has a unit behind one number only; write it behind both, or behind the last for both` };
  const [x, y] = [lengthIn(along, units, min, max), lengthIn(across, units, min, max)];
  if ("wrong" in x) return x;
  return "wrong" in y ? y : { value: [x.value, y.value] };
}

/** Returns the row of a bar. */
export function barIn(text: string): Checked<string> {
  const row = findRow(BARS, text);
  if (row !== undefined) return { value: row.key };
  return { wrong: `${text} is not among the bars: ${BARS.rows.map(({ key }) => key).join(", ")}` };
}

/** Returns one of a few words or numbers. */
export function wordIn<Word extends string>(text: string, words: readonly Word[]): Checked<Word> {
  const found = words.find((word) => word === text.trim().toLowerCase());
  return found === undefined ? { wrong: `${text} is none of ${words.join(", ")}` } : { value: found };
}
