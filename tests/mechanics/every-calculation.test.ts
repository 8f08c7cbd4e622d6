import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spell, splitCitation } from "../../src/core/bibliography.ts";
import { type Calculation, isRefusal } from "../../src/core/calculation.ts";
import { isWords, symbolsOf } from "../../src/core/formula.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { runs } from "../support/thorough.ts";

type Numbers = Readonly<Record<string, number>>;

function anything(calculation: Calculation): fc.Arbitrary<Numbers> {
  const extremes = [0, -0, 1, -1, 5e-324, 1e-300, 1e-12, 1e12, 1e300, Number.MAX_VALUE, -Number.MAX_VALUE];
  const strange = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const one = fc.oneof(
    fc.double(),
    fc.double({ min: 0, max: 1000, noNaN: true }),
    fc.integer({ min: 0, max: 50 }),
    fc.constantFrom(...extremes, ...strange),
  );
  return fc.record(Object.fromEntries(Object.keys(calculation.inputs).map((key) => [key, one])));
}

it("has no two calculations of one name", () => {
  const names = CALCULATIONS.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(names.every((name) => /^[a-z]+(-[a-z0-9]+)*$/.test(name))).toBe(true);
});

describe.each(CALCULATIONS.map((calculation) => [calculation.name, calculation] as const))("%s", (_, calculation) => {
  const symbols = [...Object.values(calculation.inputs), ...Object.values(calculation.results)].map((q) => q.symbol);

  it("names every symbol once, in the letters a formula can hold", () => {
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const symbol of symbols) expect(symbolsOf(symbol)).toEqual([symbol]);
  });

  it("prints a formula for every result, of its own symbols only", () => {
    expect(Object.keys(calculation.formulas)).toEqual(Object.keys(calculation.results));
    for (const [key, formula] of Object.entries(calculation.formulas)) {
      if (isWords(formula)) expect(formula).toMatch(/^".{15,}"$/);
      else expect(symbols).toEqual(expect.arrayContaining(symbolsOf(formula)));
      expect(symbolsOf(isWords(formula) ? "" : formula)).not.toContain(calculation.results[key]?.symbol);
    }
  });

  it("cites sources, and says where it holds", () => {
    const citations = [calculation.source, ...calculation.examples.map(({ source }) => source)];
    for (const citation of citations) {
      expect(spell(citation)).not.toContain("undefined");
      expect(splitCitation(citation).key).not.toBe("");
    }
    expect(calculation.valid.length).toBeGreaterThan(10);
    const meanings = [...Object.values(calculation.inputs), ...Object.values(calculation.results)];
    for (const { meaning } of meanings) expect(meaning.length).toBeGreaterThan(3);
  });

  it("reproduces its worked examples within their printed digits", () => {
    expect(calculation.examples.length).toBeGreaterThan(0);
    for (const { given, gives, within } of calculation.examples) {
      const outcome = calculation.compute(given);
      if (isRefusal(outcome)) throw new Error(outcome.refused);
      expect(Object.keys(gives).length).toBeGreaterThan(0);
      for (const [key, wanted] of Object.entries(gives)) {
        const error = Math.abs((outcome[key] ?? Number.NaN) - (wanted ?? Number.NaN));
        expect(error, `${key}: ${outcome[key]} for ${wanted}`).toBeLessThanOrEqual(within * Math.abs(wanted ?? 0));
      }
    }
  });

  it("gives finite numbers or a reason, whatever it is given", () => {
    fc.assert(
      fc.property(anything(calculation), (inputs) => {
        const outcome = calculation.compute(inputs);
        if (isRefusal(outcome)) {
          const { found, limit } = outcome.defect ?? {};
          const known = [found, limit].every((one) => one === undefined || Number.isFinite(one.value));
          return known && /^(?!.*(NaN|Infinity)).{6,}$/.test(outcome.refused);
        }
        return Object.keys(calculation.results).every((key) => Number.isFinite(outcome[key]));
      }),
      { numRuns: runs(1000), seed: 11 },
    );
  });

  it("refuses just outside each of its limits, and names the input", () => {
    const example = calculation.examples[0]?.given ?? {};
    const step = (value: number) => Math.max(1e-9, Math.abs(value) * 1e-9);
    for (const [key, limits = {}] of Object.entries(calculation.limits ?? {})) {
      const { above, from, below, to, whole } = limits;
      const beyond = [
        ...(above === undefined ? [] : [above]),
        ...(from === undefined ? [] : [from - step(from)]),
        ...(below === undefined ? [] : [below]),
        ...(to === undefined ? [] : [to + step(to)]),
        ...(whole === undefined ? [] : [(example[key] ?? 0) + 0.5]),
      ];
      expect(beyond.length, key).toBeGreaterThan(0);
      const symbol = calculation.inputs[key]?.symbol ?? "";
      for (const value of beyond) {
        const outcome = calculation.compute({ ...example, [key]: value });
        expect(outcome, `${key} = ${value}`).toHaveProperty("refused", expect.stringMatching(/ must be /));
        expect((outcome as { refused: string }).refused.startsWith(`${symbol} is `)).toBe(true);
      }
    }
  });

  it("keeps its examples inside its limits, and works on the limits it lets in", () => {
    for (const { given } of calculation.examples) expect(isRefusal(calculation.compute(given))).toBe(false);
    const example = calculation.examples[0]?.given ?? {};
    for (const [key, limits = {}] of Object.entries(calculation.limits ?? {})) {
      const { from, to } = limits;
      for (const value of [from, to].filter((one) => one !== undefined)) {
        const outcome = calculation.compute({ ...example, [key]: value });
        if (isRefusal(outcome)) expect(outcome.refused, `${key} = ${value}`).not.toMatch(/ must be /);
      }
    }
  });

  it("refuses what is not a number", () => {
    const example = calculation.examples[0]?.given ?? {};
    for (const key of Object.keys(calculation.inputs)) {
      const outcome = calculation.compute({ ...example, [key]: Number.NaN });
      expect(outcome).toHaveProperty("refused");
    }
  });
});
