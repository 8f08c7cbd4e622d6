import type { Row, Values } from "../core/table.ts";

/** Returns the row with its note, or the row as it is when there is nothing to say. */
export function noted<V extends Values>(row: Row<V>, note: string | undefined): Row<V> {
  return note === undefined ? row : { ...row, note };
}
