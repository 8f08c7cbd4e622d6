import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { explain } from "../../src/cli/commands/explain.ts";
import { factAccount } from "../../src/cli/explain/fact-account.ts";
import { spell } from "../../src/core/bibliography.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage, type Fact, type Plan } from "../../src/stage/index.ts";
import { searchOf } from "../../src/stage/searches.ts";
import { collect } from "../cli/collect.ts";
import { widePlan } from "../support/plans.ts";

const ROOT = "presets/stages";
const shipped = readdirSync(ROOT).map((name): [string, Plan] => {
  const { value } = readStagePreset(readYaml(name, readFileSync(join(ROOT, name), "utf8")));
  if (value === undefined) throw new Error(`${name} is unreadable`);
  return [name, value.plan];
});
const FOUR = { three: { at: [200, 430] }, four: { at: [560, 430], type: "free", bar: "arm-back" } };
const MACHINES: [string, Plan][] = [
  ...shipped,
  ["wide", widePlan()],
  ["wide, its plate on four mounts", widePlan({ plate: { mounts: FOUR } })],
  ["wide, a heavy print outside its screws", widePlan({ print: "8 kg" })],
  ["wide, an arm past its nuts", widePlan({ screws: { A: { at: [260, 62] } } })],
];

/** A fact worked out again from its inputs alone. */
function again({ from }: Fact): number | undefined {
  if (from === undefined) return undefined;
  const calculation = CALCULATIONS.find(({ name }) => name === from.calculation);
  const results = calculation?.compute(from.inputs) as Readonly<Record<string, number>> | undefined;
  return results?.[from.result] ?? searchOf(from.calculation)?.again(from.inputs, from.result);
}

describe.each(MACHINES)("every number of %s", (_, plan) => {
  const stage = deriveStage(plan, () => UNCALIBRATED);
  const facts = stage.sections.flatMap((section) => section.facts);
  const page = (what: string) => collect((io) => explain({ what, json: false, stage }, io, UNCALIBRATED));

  test("that comes from a calculation or a search comes out of it again", () => {
    const worked = facts.filter(({ from }) => from !== undefined);
    expect(worked.length).toBeGreaterThan(50);
    for (const fact of worked) {
      const found = again(fact);
      const off = Math.abs((found ?? Number.NaN) - fact.value);
      // A slide is searched for to 1e-6 mm.
      expect(off, `${fact.key}: ${fact.value}, again ${found}`).toBeLessThanOrEqual(
        1e-6 * Math.max(1, Math.abs(fact.value)),
      );
    }
  });

  test("has its page, with where it comes from", () => {
    expect(facts.length).toBeGreaterThan(100);
    for (const fact of facts) {
      const { key, label, from } = fact;
      // A sum, or the largest of several cases: told in words and numbers, the result among them.
      const account = factAccount(stage, fact)?.join(" ").replace(/\s+/g, " ");
      const said = page(key).join(" ").replace(/\s+/g, " ");
      expect(said).toContain(`${key}: ${label}`.replace(/\s+/g, " "));
      const of = CALCULATIONS.find(({ name }) => name === from?.calculation) ?? searchOf(from?.calculation);
      if (account !== undefined) expect(said, key).toContain(account.trim());
      else if (from === undefined) expect(said).toContain("placed or counted: no formula");
      else expect(said, key).toContain(`source ${spell(of?.source ?? "geometry")}`.replace(/\s+/g, " "));
      if (account === undefined && from !== undefined)
        expect(said, key).toContain(`tramwright explain ${from.calculation}`);
    }
  });

  test("names a calculation or a search that has a page of its own", () => {
    for (const name of new Set(facts.flatMap(({ from }) => from?.calculation ?? []))) {
      const said = collect((io) => explain({ what: name, json: false }, io, UNCALIBRATED));
      expect(said[0]).toContain(`${name}: `);
    }
  });
});
