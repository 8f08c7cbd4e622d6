import { describe, expect, test } from "vitest";
import { SOURCES, splitCitation } from "../../src/core/bibliography.ts";
import { FORMULA_FUNCTIONS, isWords, symbolsOf } from "../../src/core/formula.ts";
import { metaOf } from "../../src/core/parameter.ts";
import type { Check } from "../../src/parts/check.ts";
import type { AnyFamily } from "../../src/parts/family.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { evaluateFormula } from "../support/evaluate.ts";
import { riser } from "../support/example-family.ts";
import { printerWith } from "../support/printer.ts";
import { someOf } from "../support/thorough.ts";

type Change = Readonly<Record<string, unknown>>;

/** Works a family out with its defaults and a change of them; printer settings stand under `printer`. */
function designWith(family: AnyFamily, { printer, ...parameters }: Change = {}) {
  const given = family.schema.parse(parameters) as Readonly<Record<string, unknown>>;
  return family.design(given, printerWith(printer as Change | undefined));
}

function closeTo(actual: number, expected: number): boolean {
  return Math.abs(actual - expected) <= 1e-6 * Math.max(1, Math.abs(expected));
}

describe.each([...FAMILIES, riser])("$name", (family) => {
  /** The defaults, and every example that trips a check: together they reach the branches of the formulas. */
  const examples: Change[] = [{}, ...family.checks.flatMap(({ trips }) => Object.values(trips) as Change[])];

  test("its defaults pass without an error or a warning", () => {
    const loud = designWith(family).diagnostics.filter(({ level }) => level !== "note");
    expect(loud.map(({ name, says }) => `${name}: ${says}`)).toEqual([]);
  });

  test("every derived number is finite, named once and sourced", () => {
    for (const example of examples) {
      const { dimensions, givens } = designWith(family, example);
      for (const { key, value, source, meaning } of dimensions) {
        expect(Number.isFinite(value), `${key} in ${JSON.stringify(example)}`).toBe(true);
        expect(SOURCES).toHaveProperty([splitCitation(source as never).key]);
        expect(meaning).not.toBe("");
      }
      const symbols = dimensions.map(({ symbol }) => symbol);
      expect(new Set(symbols).size).toBe(symbols.length);
      const inputs = new Map(givens.map(({ symbol, value }) => [symbol, value]));
      for (const { symbol, value } of givens) expect(inputs.get(symbol), `${symbol} means two things`).toBe(value);
    }
  });

  test("every printed formula gives the derived number", () => {
    for (const example of someOf(examples)) {
      const { dimensions, givens } = designWith(family, example);
      const scope = new Map([...givens, ...dimensions].map(({ symbol, value }) => [symbol, value]));
      // A parameter that overrides a derived value has the same symbol as it; the derived one is what formulas mean.
      for (const { key, symbol, value, formula } of dimensions) {
        if (isWords(formula)) continue;
        const unknown = symbolsOf(formula).filter((word) => !scope.has(word) && !(word in FORMULA_FUNCTIONS));
        expect(unknown, `${key}: ${formula}`).toEqual([]);
        const computed = evaluateFormula(formula, Object.fromEntries(scope));
        expect(
          closeTo(computed, value),
          `${key} (${symbol}) = ${formula}: ${computed} against ${value} in ${JSON.stringify(example)}`,
        ).toBe(true);
      }
    }
  });

  test("most of its numbers have a formula that can be evaluated", () => {
    const { dimensions } = designWith(family);
    const words = dimensions.filter(({ formula }) => isWords(formula));
    expect(words.length).toBeLessThanOrEqual(dimensions.length / 3);
  });

  test("check names are unique, state the defect and say why", () => {
    const names = family.checks.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { name, why } of family.checks) {
      expect(name).toMatch(/^[a-z]+(-[a-z]+)+$/);
      expect(why.length).toBeGreaterThan(20);
    }
  });

  const trips = family.checks.flatMap((check: Check<never, never>) =>
    Object.entries(check.trips).map(([level, change]) => ({
      name: check.name,
      level,
      change: change as Change,
      check,
    })),
  );

  test("every check has an example that trips it", () => {
    const without = family.checks.filter((check) => Object.keys(check.trips).length === 0).map(({ name }) => name);
    expect(without).toEqual([]);
  });

  test.each(trips)("$name: its $level example trips it", ({ name, level, change }) => {
    const { diagnostics } = designWith(family, change);
    const found = diagnostics.filter((diagnostic) => diagnostic.name === name);
    expect(found.map((diagnostic) => diagnostic.level)).toContain(level);
    for (const { says, why, set } of found) {
      for (const words of [says, why, set]) {
        expect(words).not.toMatch(/NaN|Infinity|undefined|\d\.\d{5,}/);
        expect(words.length).toBeGreaterThan(3);
      }
    }
  });

  const MORE = /over(loaded|stressed)|crush|bends|creeps|sink|buckle|both-rings$|splits|too-tall|tips-at/;
  const LESS = /too-(thin|low|small|narrow|near)|shorter|smaller|rubs|solid|below|hits|grinds/;

  test.each(trips.filter(({ name }) => MORE.test(name) !== LESS.test(name)))(
    "$name: what its $level found is on the side of the limit that its name says",
    ({ name, change }) => {
      const numbers = designWith(family, change).diagnostics.filter((diagnostic) => diagnostic.name === name);
      for (const { found, limit } of numbers) {
        if (found === undefined || limit === undefined) continue;
        expect(Math.sign(found.value - limit.value)).toBe(MORE.test(name) ? 1 : -1);
      }
    },
  );

  test.each(trips.filter(({ change }) => Object.keys(change).length > 0))(
    "$name: the defaults do not trip its $level",
    ({ name, level }) => {
      const found = designWith(family).diagnostics.filter((diagnostic) => diagnostic.name === name);
      expect(found.map((diagnostic) => diagnostic.level)).not.toContain(level);
    },
  );

  test("every parameter says what it is", () => {
    for (const [name, field] of Object.entries(family.schema.shape)) {
      expect(metaOf(field as never).description, name).not.toBe("");
    }
  });

  test("its sketch fits the screen", () => {
    for (const line of family.sketch.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
    expect(family.sketch.trim()).not.toBe("");
  });

  test("it prints cautions, limits and pieces", () => {
    const design = designWith(family);
    expect(design.cautions).toContain("not-lifting-gear");
    expect(design.limits.length).toBeGreaterThan(0);
    for (const piece of design.pieces()) {
      expect(piece.measures).toHaveLength(3);
      expect(piece.count).toBeGreaterThan(0);
    }
  });
});
