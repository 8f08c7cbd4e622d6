import type { Field, Row, Table, Values } from "./table.ts";

/**
 * How sources that disagree are settled. A published standard goes before a maker's page, a maker's page before a
 * seller's and before a part somebody measured; a misprint in a standard's table is replaced by what its own formula
 * gives. Among sources of one rank the value that does no harm is taken.
 */
export const SETTLED = {
  standard: "the standard is used",
  formula: "the standard's own formula is used",
  maker: "the maker is used",
  lower: "the lowest is used",
  higher: "the highest is used",
  middle: "the middle is used",
  usual: "the usual one is used, measure your own",
} as const;

export type Settled = keyof typeof SETTLED;

/** One value of a row on which sources disagree. */
export interface Disagreement {
  readonly field: string;
  /** What the others have, in the unit of the field. */
  readonly others: readonly (number | string)[];
  /** Who the others are. */
  readonly by: string;
  readonly settled: Settled;
}

/** Declares that others have other values for some fields of one row, all of them settled in the same way. */
export function differing<V extends Values>(
  settled: Settled,
  by: string,
  others: Readonly<Partial<Record<keyof V & string, readonly (number | string)[]>>>,
): Disagreement[] {
  const fields = Object.keys(others) as (keyof V & string)[];
  return fields.map((field) => ({ field, others: others[field] ?? [], by, settled }));
}

/** Returns a disagreement as a sentence: `C also 1301 N (other makers); the lowest is used`. */
export function spellDisagreement({ symbol, unit }: Field, { others, by, settled }: Disagreement): string {
  return `${symbol} also ${`${others.join(", ")} ${unit}`.trimEnd()} (${by}); ${SETTLED[settled]}`;
}

/** Returns the disagreements of a row, each as a sentence. */
export function disagreements(table: Table, row: Row): string[] {
  return (row.differs ?? []).map((one) => spellDisagreement(table.fields[one.field] as Field, one));
}
