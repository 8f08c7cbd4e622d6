import { describe, expect, it } from "vitest";
import { type Calculation, isRefusal } from "../../src/core/calculation.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";

/**
 * Values at which formulas break: zero of both signs, the smallest and largest numbers of every kind, angles of a
 * quarter and a half turn, and the steps of the tables. Random numbers hardly ever hit them together.
 */
const EDGES = [
  ...[0, -0, 5e-324, 1e-300, 1e-160, 1e-12, 1e-6, 0.05, 0.15, 0.25, 0.4, 0.5, 1 - 1e-16, 1, 1 + 3e-16, 1.5, 2, 3, 5, 6],
  ...[8, 10, 12, 16, 45, 90, 180, 200, 250, 256, 360, 500, 1000, 2000, 1e6, 1e12, 1e77, 1e154, 1e155, 1e300],
  ...[Number.MAX_VALUE, -1, -0.5, -45, -90, -200, -1e12, -1e300, -Number.MAX_VALUE, -5e-324],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
];

type Numbers = Readonly<Record<string, number>>;

/** What is wrong with an outcome; undefined when it is finite numbers, or a reason that holds no broken number. */
function broken(calculation: Calculation, inputs: Numbers): string | undefined {
  const said = JSON.stringify(inputs);
  try {
    const outcome = calculation.compute(inputs);
    if (isRefusal(outcome)) {
      const { defect } = outcome;
      const amounts = [defect?.found, defect?.limit].filter((amount) => amount !== undefined);
      const text = [outcome.refused, defect?.set, defect?.why].join(" ");
      const holds = amounts.every(({ value }) => Number.isFinite(value)) && !/NaN|Infinity|undefined/.test(text);
      return holds && outcome.refused.length > 5 ? undefined : `${said}: ${JSON.stringify(outcome)}`;
    }
    const finite = Object.keys(calculation.results).every((key) => Number.isFinite(outcome[key]));
    return finite ? undefined : `${said}: ${JSON.stringify(outcome)}`;
  } catch (thrown) {
    return `${said}: ${thrown}`;
  }
}

/** Every pair of inputs at every pair of edges, the others as in a worked example. */
function* pairs(calculation: Calculation): Generator<Numbers> {
  const keys = Object.keys(calculation.inputs);
  for (const { given } of calculation.examples.slice(0, 2)) {
    for (const [index, first] of keys.entries()) {
      for (const second of keys.slice(index)) {
        for (const a of EDGES) {
          for (const b of first === second ? [a] : EDGES) yield { ...given, [first]: a, [second]: b };
        }
      }
    }
  }
}

describe.each(CALCULATIONS.map((calculation) => [calculation.name, calculation] as const))("%s", (_, calculation) => {
  it("gives finite numbers or a reason at every pair of edges", () => {
    const faults: string[] = [];
    let computed = 0;
    for (const inputs of pairs(calculation)) {
      const fault = broken(calculation, inputs);
      if (fault !== undefined) faults.push(fault);
      else computed++;
      if (faults.length >= 3) break;
    }
    expect(faults).toEqual([]);
    expect(computed).toBeGreaterThanOrEqual(EDGES.length);
  });
});
