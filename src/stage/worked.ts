import { type Calculation, isRefusal, type Refusal } from "../core/calculation.ts";
import type { Path } from "../core/diagnostic.ts";
import type { Finding } from "../parts/check.ts";
import { type Fact, factOf, type Limit } from "./fact.ts";
import { type StageDefect, stageDefect } from "./stage-defects.ts";

/** How a result is called in the machine: key, words, and the limit it is held against. */
export type Naming = readonly [key: string, label: string, limit?: Limit | undefined];

/** A calculation carried out: its results, those of them that are facts of the machine, or why it refused. */
export interface Worked<Result extends string> {
  readonly values: Readonly<Record<Result, number>> | undefined;
  readonly facts: readonly Fact[];
  readonly refusal: Refusal | undefined;
}

/** Carries out a calculation and returns the named results as facts. */
export function worked<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  inputs: Readonly<Record<Input, number>>,
  named: Readonly<Partial<Record<NoInfer<Result>, Naming>>>,
): Worked<Result> {
  const outcome = of.compute(inputs);
  if (isRefusal(outcome)) return { values: undefined, facts: [], refusal: outcome };
  const facts = (Object.entries(named) as [Result, Naming][]).map(([result, [key, label, limit]]) =>
    factOf(of, inputs, result, outcome[result], { key, label, limit }),
  );
  return { values: outcome, facts, refusal: undefined };
}

export const atMost = (value: number): Limit => ({ value, kind: "at most" });
export const atLeast = (value: number): Limit => ({ value, kind: "at least" });

/** Returns what a check found as a defect of the machine at a place in the plan; nothing when it found nothing. */
export function told(name: StageDefect, path: Path, finding: Finding | undefined) {
  if (finding === undefined) return [];
  const { level, says, set, found, limit, unit = "" } = finding;
  return [
    stageDefect(name, {
      level,
      path: finding.path ?? path,
      says,
      set,
      ...(found === undefined ? {} : { found: { value: found, unit } }),
      ...(limit === undefined ? {} : { limit: { value: limit, unit } }),
    }),
  ];
}
