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
  readonly plate: readonly [number, number];
  readonly lift: number;
  readonly loops: 1 | 2;
}

export const USUAL = {
  mm: { plate: "300 x 250", lift: "200", bar: "20x20 slot 6" },
  in: { plate: "12 x 10", lift: "8", bar: "1 in" },
} as const;

/** An answer as the plan needs it, or what is wrong with it in words. */
export type Checked<Value> = { readonly value: Value } | { readonly wrong: string };

/** Returns a length in mm; a bare number is in the unit of the plan. */
export function lengthIn(text: string, units: "mm" | "in", min: number, max: number): Checked<number> {
  const bare = /[a-z"'″”“′’‘]/i.test(text) ? text : `${text} ${units}`;
  const reading = readQuantity(bare, "length");
  if ("wrong" in reading) return { wrong: `${reading.wrong}; it takes ${reading.set}` };
  const inUnit = (value: number) => (units === "mm" ? `${value} mm` : `${Number((value / 25.4).toPrecision(3))} in`);
  if (reading.value >= min && reading.value <= max) return { value: reading.value };
  return { wrong: `${text} is outside ${inUnit(min)} to ${inUnit(max)}` };
}

/** Returns width and depth of a plate: `300 x 250`, `12 in x 10 in`. */
export function plateIn(text: string, units: "mm" | "in"): Checked<readonly [number, number]> {
  const [, along = "", across = ""] = /^\s*(.+?)\s*[x×*]\s*(.+?)\s*$/i.exec(text) ?? [];
  if (along === "")
    return { wrong: `${text} is no size of a plate; it takes width x depth, such as ${USUAL[units].plate}` };
  const [x, y] = [lengthIn(along, units, 120, 900), lengthIn(across, units, 120, 900)];
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
