import { describe, expect, test } from "vitest";
import { SOLVERS } from "../../scripts/docs/solvers.ts";
import { spell } from "../../src/core/bibliography.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { expectPrinted } from "./printed.ts";

test("no solver has the name of another, or of a calculation", () => {
  const names = [...SOLVERS, ...CALCULATIONS].map(({ name }) => name);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

describe.each(SOLVERS)("$name", ({ takes, gives, how, valid, source, examples }) => {
  test("says what it takes, gives and does, where it holds and where it comes from", () => {
    for (const words of [takes, gives, how, valid]) expect(words.length).toBeGreaterThan(10);
    expect(spell(source)).not.toContain("undefined");
  });

  test.each(examples)("$says: $printed", ({ computed, printed }) => {
    const value = computed();
    if (typeof value === "string") expect(value).toBe(printed);
    else expectPrinted(value, printed);
  });
});
