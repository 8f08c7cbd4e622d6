import { type Calculation, isRefusal, type Refusal } from "../core/calculation.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Unit } from "../core/unit.ts";

/** What a number of the machine is held against. */
export interface Limit {
  readonly value: number;
  readonly kind: "at most" | "at least";
}

/** A number of the machine: its name, what it follows from, and the limit it is held against. */
export interface Fact {
  /** Its name for `explain`, unique in the machine: `screw.A.share`. */
  readonly key: string;
  /** What it is, as a line of the report says it. */
  readonly label: string;
  readonly value: number;
  readonly unit: Unit;
  /** The calculation it comes from, with its inputs; absent for a number that was only placed or counted. */
  readonly from?: { readonly calculation: string; readonly result: string; readonly inputs: Inputs };
  readonly limit?: Limit;
}

type Inputs = Readonly<Record<string, number>>;

/** One block of the report. */
export interface Section {
  readonly title: string;
  readonly facts: readonly Fact[];
  /** What is no number: choices, and candidates with why they lost. */
  readonly lines?: readonly string[];
}

/** What one topic of the machine has to say. */
export interface Topic {
  readonly sections: readonly Section[];
  /** Their paths lead into the plan: `["screws", "A"]`. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What a topic says that cannot be worked out. */
export const NOTHING: Topic = { sections: [], diagnostics: [] };

type Words = Pick<Fact, "key" | "label"> & { readonly limit?: Limit | undefined };

/** Returns a result of a calculation as a fact, or the calculation's refusal. */
export function factFrom<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  inputs: Readonly<Record<Input, number>>,
  result: Result,
  words: Words,
): Fact | Refusal {
  const outcome = of.compute(inputs);
  return isRefusal(outcome) ? outcome : factOf(of, inputs, result, outcome[result], words);
}

/** Returns a result that a calculation has given as a fact. */
export function factOf<Input extends string, Result extends string>(
  { name, results }: Calculation<Input, Result>,
  inputs: Readonly<Record<Input, number>>,
  result: Result,
  value: number,
  { key, label, limit }: Words,
): Fact {
  const from = { calculation: name, result, inputs };
  return { key, label, value, unit: results[result].unit, from, ...(limit === undefined ? {} : { limit }) };
}

/** Returns how far a value is inside its limit, as a share of the limit; below 0 it is outside. */
export function marginOf({ value, limit }: Pick<Fact, "value" | "limit">): number | undefined {
  if (limit === undefined || limit.value === 0) return undefined;
  const share = (limit.value - value) / Math.abs(limit.value);
  return limit.kind === "at most" ? share : -share;
}
