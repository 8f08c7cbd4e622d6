import type { Row, Values } from "./table.ts";

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
