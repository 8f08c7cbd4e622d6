import { expect, test } from "vitest";
import { BARS } from "../../src/catalogue/bars.ts";
import { SCREWS } from "../../src/catalogue/screws.ts";
import { hardware } from "../../src/core/hardware.ts";
import { nearest } from "../../src/core/nearest.ts";
import type { Table } from "../../src/core/table.ts";

test("a decimal comma is read as a point before names are compared", () => {
  expect(nearest("Tr8x1,5", ["Tr8x2", "Tr8x1.5"])).toBe("Tr8x1.5");
  expect(nearest("a, b", ["a; b"])).toBe("a; b");
});

const proposed = (table: Table, typed: string) => {
  const parsed = hardware(table, "").safeParse(typed);
  const [issue] = parsed.error?.issues ?? [];
  return (issue as { params?: { set?: string } } | undefined)?.params?.set;
};

test.each([
  [SCREWS, "Tr8x1,5", "Tr8x1.5"],
  // What YAML leaves of it inside brackets.
  [SCREWS, "Tr8x1", "Tr8x1.5"],
  [BARS, "20x40", "20x40 slot 6"],
] as unknown as [Table, string, string][])("of %o, %s is taken for %s", (table, typed, set) => {
  expect(proposed(table, typed)).toBe(set);
});
