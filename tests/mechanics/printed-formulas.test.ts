import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Calculation, isRefusal } from "../../src/core/calculation.ts";
import { isWords, symbolsOf } from "../../src/core/formula.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { evaluateFormula } from "../support/evaluate.ts";

/** Noise that a difference of like numbers may leave. */
const NOISE = 1e-12;

type Numbers = Readonly<Record<string, number>>;

/** Inputs near a worked example: each one kept, scaled, or scaled to a whole number. */
function plausible(calculation: Calculation): fc.Arbitrary<Numbers> {
  const given = calculation.examples.map((example) => fc.record(spread(example.given)));
  return fc.oneof(...given);
}

function spread(given: Numbers): Record<string, fc.Arbitrary<number>> {
  return Object.fromEntries(Object.entries(given).map(([key, value]) => [key, near(value)]));
}

function near(value: number): fc.Arbitrary<number> {
  if (value === 0) return fc.oneof(fc.constantFrom(0, 0, 1), fc.double({ min: 0, max: 10, noNaN: true }));
  const scaled = fc.double({ min: 0.6, max: 1.6, noNaN: true }).map((factor) => value * factor);
  const kept = { arbitrary: fc.constant(value), weight: 2 };
  if (!Number.isInteger(value)) return fc.oneof(kept, scaled);
  return fc.oneof(kept, scaled, scaled.map(Math.round));
}

function bySymbol(calculation: Calculation, inputs: Numbers): Record<string, number> {
  return Object.fromEntries(
    Object.entries(calculation.inputs).map(([key, { symbol }]) => [symbol, inputs[key] ?? NaN]),
  );
}

/** Evaluates the printed formulas, each on inputs and on results of the formulas before it, never on `compute`. */
function evaluated(calculation: Calculation, inputs: Numbers, computed: Numbers): [key: string, value: number][] {
  const known = bySymbol(calculation, inputs);
  const open = new Map(Object.entries(calculation.formulas));
  for (const [key, formula] of open) {
    if (!isWords(formula)) continue;
    known[calculation.results[key]?.symbol ?? ""] = computed[key] ?? Number.NaN;
    open.delete(key);
  }
  const values: [string, number][] = [];
  while (open.size > 0) {
    const next = [...open].find(([, formula]) => symbolsOf(formula).every((symbol) => symbol in known));
    if (next === undefined) throw new Error(`${calculation.name}: formulas go round in a circle`);
    const value = evaluateFormula(next[1], known);
    known[calculation.results[next[0]]?.symbol ?? ""] = value;
    values.push([next[0], value]);
    open.delete(next[0]);
  }
  return values;
}

/** Agreement to nine digits. */
function agree(printed: number, computed: number): boolean {
  return Math.abs(printed - computed) <= Math.max(1e-9 * Math.abs(computed), NOISE);
}

describe.each(CALCULATIONS.map((calculation) => [calculation.name, calculation] as const))("%s", (_, calculation) => {
  it("computes what its formulas print, on inputs near its examples", () => {
    let accepted = 0;
    const runs = 200;
    fc.assert(
      fc.property(plausible(calculation), (inputs) => {
        const outcome = calculation.compute(inputs);
        if (isRefusal(outcome)) return;
        accepted++;
        expect(Object.keys(outcome).sort()).toEqual(Object.keys(calculation.results).sort());
        for (const [key, printed] of evaluated(calculation, inputs, outcome)) {
          const computed = outcome[key] ?? Number.NaN;
          expect(agree(printed, computed), `${key}: formula ${printed}, computed ${computed}`).toBe(true);
        }
      }),
      { numRuns: runs, seed: 7 },
    );
    expect(accepted).toBeGreaterThan(runs / 10);
  });
});
