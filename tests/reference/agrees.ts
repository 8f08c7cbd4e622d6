import { describe, expect, it } from "vitest";
import { row, type Table, type Values } from "../../src/core/table.ts";

/** A published table as it is carried in here: where it comes from, and its rows with the key first. */
export interface Published<V extends Values> {
  readonly source: string;
  /** Whether the values stood on a page that was read; otherwise they are from memory. */
  readonly from: "seen" | "memory";
  readonly columns: readonly (keyof V & string)[];
  readonly rows: readonly (readonly [string, ...number[]])[];
}

/** Declares one test per published row: the table of the catalogue has the same values in those columns. */
export function agrees<V extends Values>(table: Table<V>, published: Published<V>): void {
  describe(`${table.name} against ${published.source} (${published.from})`, () => {
    it.each(published.rows.map((each) => [each[0], each.slice(1)] as const))("%s", (key, numbers) => {
      expect(numbers.length).toBe(published.columns.length);
      const { values } = row(table, key);
      expect(published.columns.map((column) => values[column])).toEqual(numbers);
    });
  });
}
