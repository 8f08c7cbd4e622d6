import type { Citation } from "./bibliography.ts";
import type { Disagreement } from "./disagreement.ts";
import type { Unit } from "./unit.ts";

/**
 * How a row may be used: `standard` holds for every part sold under that standard; `published` comes from one maker's
 * or author's page; `typical` is what the trade usually sells, and must be measured before it carries a load.
 */
export type Standing = "standard" | "published" | "typical";

export interface Field {
  readonly symbol: string;
  readonly unit: Unit;
  readonly meaning: string;
  /** Where this column comes from, when it is not the source of the row. */
  readonly source?: Citation;
}

export type Values = Readonly<Record<string, number | string>>;

/** One bought item. A row without a source does not compile. */
export interface Row<V extends Values = Values> {
  readonly key: string;
  readonly values: V;
  readonly source: Citation;
  readonly standing: Standing;
  /** Whether the values stood on a page that was read; otherwise they are from memory. */
  readonly from: "seen" | "memory";
  /** What to look out for. */
  readonly note?: string;
  /** The values on which sources disagree, and which one was taken. */
  readonly differs?: readonly Disagreement[];
}

export interface Table<V extends Values = Values> {
  /** The word the user types: `bearings`. */
  readonly name: string;
  /** What one row is, in the singular: `bearing`. */
  readonly item: string;
  readonly title: string;
  readonly fields: { readonly [Key in keyof V]: Field };
  readonly rows: readonly Row<V>[];
  /** A text drawing, at most 78 columns, that shows where each symbol is measured. */
  readonly sketch: string;
}

/** Returns the row of that key, ignoring case and outer blanks; undefined when there is none. */
export function findRow<V extends Values>(table: Table<V>, key: string): Row<V> | undefined {
  const wanted = key.trim().toLowerCase();
  return table.rows.find((row) => row.key.toLowerCase() === wanted);
}

/** Returns the row of that key; throws when there is none: for keys that are written in the source. */
export function row<V extends Values>(table: Table<V>, key: string): Row<V> {
  const found = findRow(table, key);
  if (found === undefined) throw new RangeError(`${table.name} has no row ${key}`);
  return found;
}
