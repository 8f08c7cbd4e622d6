import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readTarget } from "../../src/cli/load.ts";
import { loadStage, type Machine } from "../../src/cli/load-stage.ts";
import { explainIn } from "../../src/cli/run-explain.ts";
import { collect, document, expectReadable } from "./collect.ts";

const PLANS = ["stages", "examples"].flatMap((folder) =>
  readdirSync(`presets/${folder}`).map((name) => `presets/${folder}/${name}`),
);

function machineOf(plan: string): Machine {
  const { machine } = loadStage(readTarget(plan), { set: [], printer: undefined, version: "1" });
  if (machine === undefined) throw new Error(`${plan} does not load`);
  return machine;
}

const page = (machine: Machine, what: string) => collect((io) => explainIn(machine, { what, json: false }, io));

test.each(PLANS)("every name that the report of %s prints is known to explain, as the report's number", (plan) => {
  const machine = machineOf(plan);
  const facts = machine.stage.sections.flatMap((section) => section.facts);
  expect(facts.length).toBeGreaterThan(50);
  for (const { key, value } of facts) {
    const [one] = document((io) => explainIn(machine, { what: key, json: true }, io)) as {
      kind: string;
      value: number;
    }[];
    expect([one?.kind, one?.value], key).toEqual(["fact", value]);
  }
});

describe("numbers of no one formula are told in words and numbers", () => {
  const machine = machineOf("presets/stages/seed-bench.yaml");
  const { sections, plan } = machine.stage;
  const fact = (name: string) => sections.flatMap(({ facts }) => facts).find(({ key }) => key === name)?.value ?? 0;

  test("the weight is the sum of the masses, each with its name", () => {
    const said = page(machine, "stage.weight");
    expectReadable(said, "stage.weight");
    const masses = said
      .filter((line) => / {2}mass\./.test(line))
      .map((line) => Number(/([\d.]+) {2,}kg/.exec(line)?.[1]));
    // Standard gravity, 9.80665 m/s2 (ISO 80000-3); each mass is shown with four digits.
    expect(9.80665 * masses.reduce((sum, one) => sum + one, 0)).toBeCloseTo(fact("stage.weight"), 1);
  });

  test("the worst load of a screw stands among its cases, with the hand's 50 N", () => {
    const said = page(machine, "screw.A.worst");
    expectReadable(said, "screw.A.worst");
    expect(said.join(" ")).toContain("a hand leans with 50 N");
    const most = said
      .filter((line) => /^ {2}(?:empty|print|hand) /.test(line))
      .map((line) => Number(line.split(/\s+/).at(-1)));
    expect(most).toHaveLength(10);
    expect(Math.max(...most)).toBeCloseTo(fact("screw.A.worst"), 1);
  });

  test("the motor's margin is a quotient of two numbers that are there", () => {
    const said = page(machine, "motor.margin");
    expectReadable(said, "motor.margin");
    const [, has, lift] = /= ([\d.]+) \/ ([\d.]+)/.exec(said.join("\n")) ?? [];
    expect(Number(has)).toBe(plan.motor.torque ?? plan.motor.motor.values.torqueSmall);
    expect(Number(has) / Number(lift)).toBeCloseTo(fact("motor.margin"), 1);
  });
});
