import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { factPages } from "../../src/cli/explain/fact-page.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import type { Fact } from "../../src/stage/index.ts";
import { run } from "../cli/program.ts";
import { evaluateFormula } from "../support/evaluate.ts";
import { loadedPlan } from "../support/loaded-plan.ts";
import { twinsOf, workedLines } from "../support/worked-page.ts";

// The expressions are worked out with mathjs (general-purpose library); their numbers were put in by hand.
const PLAN = resolve("docs/worked-machine.yaml");
const PAGE = readFileSync(resolve("docs/worked-machine.md"), "utf8");
const LINES = workedLines(PAGE);
const TWINS = twinsOf(PAGE);
const STAGE = loadedPlan(PLAN).machine.stage;
const FACTS = new Map(STAGE.sections.flatMap(({ facts }) => facts).map((fact) => [fact.key, fact]));

const factOf = (key: string): Fact => {
  const fact = FACTS.get(key);
  if (fact === undefined) throw new Error(`the report has no ${key}`);
  return fact;
};

/** Numbers that were rounded on the way may move the last digit, or a ten-thousandth, whichever is more. */
const near = (value: number, digit: number) => Math.max(1.001 * digit, 1e-4 * Math.abs(value));

describe("docs/worked-machine.md", () => {
  test("has its lines, each name once", () => {
    expect(LINES.length).toBeGreaterThan(180);
    const keys = LINES.flatMap(({ key }) => key ?? []);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
    const rows = PAGE.split("\n").filter((line) => line.startsWith("| ") && line.split(" | ").length === 5);
    expect(rows.filter((line) => !line.startsWith("| name | formula")).length).toBe(LINES.length);
  });

  test.each(LINES)("$name: $expression", ({ expression, result, digit }) => {
    expect(Math.abs(evaluateFormula(expression, {}) - result)).toBeLessThanOrEqual(0.5001 * digit);
  });

  test.each(LINES.filter(({ key }) => key !== undefined))("$key is what the program derives", (line) => {
    const { value, unit } = factOf(line.key ?? "");
    expect(unit).toBe(line.unit);
    expect(Math.abs(value - line.result), `${value}`).toBeLessThanOrEqual(near(value, line.digit));
  });

  test("names the source that the program names", () => {
    for (const { key, source } of LINES) {
      const { from } = FACTS.get(key ?? "") ?? {};
      const own = CALCULATIONS.find(({ name }) => name === from?.calculation)?.source;
      if (own !== undefined) expect([key, source]).toEqual([key, own.split(": ")[0]]);
    }
  });

  test("leaves out no number that is calculated, but those that are another one again", () => {
    const worked = new Set(LINES.flatMap(({ key }) => key ?? []));
    const left = [...FACTS.values()].filter(({ key, from }) => from !== undefined && !worked.has(key));
    const twins = left.map(({ key, value }) => {
      const twin = TWINS.find(({ name }) => (name.endsWith(".") ? key.startsWith(name) : key === name));
      if (twin === undefined) return { key, is: "missing" };
      const is = twin.name.endsWith(".") ? twin.is + key.slice(twin.name.length) : twin.is;
      expect(Math.abs(value - factOf(is).value), `${key} is ${is}`).toBeLessThanOrEqual(1e-6 * Math.abs(value));
      return { key, is: worked.has(is) || TWINS.some(({ name }) => name === is) ? "worked" : "not worked" };
    });
    expect(twins.filter(({ is }) => is !== "worked")).toEqual([]);
    // A twin that nothing needs would be a list that nobody keeps.
    const used = TWINS.filter(({ name }) =>
      left.some(({ key }) => (name.endsWith(".") ? key.startsWith(name) : key === name)),
    );
    expect(TWINS.filter((twin) => !used.includes(twin)).map(({ name }) => name)).toEqual(["carriage.right."]);
  });

  test.each(LINES.filter(({ key }) => key !== undefined))("explain $key prints it", ({ key, result, digit, unit }) => {
    const [page, ...more] = factPages(STAGE, key ?? "");
    expect(more).toEqual([]);
    const shown = page?.lines
      .map((line) => /^(?:.*= | {2})(-?[\d.]+(?:e-?\d+)?)(?: (\S+))?$/.exec(line))
      .find((found) => found !== null);
    const [, number = "", said = ""] = shown ?? [];
    expect(said).toBe(unit);
    const decimals = /\.(\d+)/.exec(number)?.[1]?.length ?? 0;
    const last = 10 ** (Number(/e(-?\d+)/.exec(number)?.[1] ?? 0) - decimals);
    expect(Math.abs(Number(number) - result), number).toBeLessThanOrEqual(near(result, Math.max(digit, last)));
    if (factOf(key ?? "").from !== undefined) expect(page?.lines.join("\n")).not.toContain("no formula");
  });

  test("the program itself explains one of them from the file", () => {
    const { code, out } = run(["explain", "screw.A.worst", "--preset", PLAN]);
    expect(code).toBe(0);
    const { result } = LINES.find(({ key }) => key === "screw.A.worst") ?? { result: Number.NaN };
    expect(Number(/= (\d+\.\d+) N$/m.exec(out)?.[1])).toBeCloseTo(result, 1);
  });

  test("the machine can be built: no error, and the corner that lifts off is told of", () => {
    expect(STAGE.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
    const warned = STAGE.diagnostics.filter(({ level }) => level === "warning").map(({ name }) => name);
    expect([...new Set(warned)]).toEqual(["stage-corner-lifts-off"]);
  });
});
