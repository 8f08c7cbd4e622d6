import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Path } from "../../src/core/diagnostic.ts";
import { deriveStage, type Plan, planSchema, type Stage } from "../../src/stage/index.ts";
import { datumFaults } from "../support/datum-check.ts";
import { printerWith } from "../support/printer.ts";
import { near, wild } from "../support/random-plans.ts";
import { runs } from "../support/thorough.ts";

const PRINTER = printerWith();
const RUNS = { wild: runs(200, 12), near: runs(40) };

/** Returns whether a path leads to something in the plan, or to a key that a thing of the plan could have. */
function leadsIn(plan: Plan, path: Path): boolean {
  const parent = path
    .slice(0, -1)
    .reduce<unknown>((thing, step) => (thing as Record<string, unknown> | undefined)?.[step], plan);
  return typeof parent === "object" && parent !== null;
}

/** Works a plan out and looks at everything that must hold of any. */
function soundly(raw: unknown): { readonly stage: Stage; readonly clean: boolean } {
  const plan = planSchema.parse(raw);
  const stage = deriveStage(plan, () => PRINTER);
  const facts = stage.sections.flatMap((section) => section.facts);
  for (const { key, value, limit, from } of facts) {
    const all = [value, limit?.value ?? 0, ...Object.values(from?.inputs ?? {})];
    expect(all.every(Number.isFinite), `${key}: ${all}`).toBe(true);
  }
  const keys = facts.map(({ key }) => key);
  expect(
    keys.filter((key, index) => keys.indexOf(key) !== index),
    "keys told twice",
  ).toEqual([]);
  for (const { name, path, says, why, set } of stage.diagnostics) {
    expect(leadsIn(plan, path), `${name} at ${path.join(".")}`).toBe(true);
    // A name that names nothing has the nearest name as its way out, which may be one letter.
    expect(set, name).not.toBe("");
    for (const words of [name, says, why]) expect(words.length, `${name}: ${words}`).toBeGreaterThan(3);
    for (const words of [says, why, set]) {
      expect(words, name).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
  }
  const clean = stage.diagnostics.every(({ level }) => level !== "error");
  if (clean) {
    expect(datumFaults(stage, () => PRINTER)).toEqual([]);
    expect(stage.feet).toHaveLength(Object.keys(plan.screws).length);
    expect(stage.loops).toHaveLength(Object.keys(plan.loops).length);
  }
  return { stage, clean };
}

describe("whatever plan is drawn at random", () => {
  test("with two to four screws and any nonsense, it is worked out, and every fault has a place and a way out", () => {
    let derived = 0;
    fc.assert(
      fc.property(wild, (raw) => {
        if (soundly(raw).stage.pulleys.length > 0) derived++;
      }),
      { numRuns: RUNS.wild },
    );
    // Those whose names all mean something are worked out to the end.
    expect(derived).toBeGreaterThan(RUNS.wild / 10);
  });

  test("near a machine that can be built, none that is called sound has a fault that an outsider sees", () => {
    let clean = 0;
    fc.assert(
      fc.property(near, (raw) => {
        if (soundly(raw).clean) clean++;
      }),
      { numRuns: RUNS.near },
    );
    expect(clean).toBeGreaterThan(RUNS.near / 5);
  });
});
