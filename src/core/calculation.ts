import type { Citation } from "./bibliography.ts";
import { CALCULATION_DEFECTS, type CalculationDefect } from "./calculation-defects.ts";
import type { Amount, Diagnostic } from "./diagnostic.ts";
import type { Unit } from "./unit.ts";

/** A number that goes into a calculation or comes out of it. */
export interface Quantity {
  readonly symbol: string;
  readonly unit: Unit;
  readonly meaning: string;
}

/** One worked example: the inputs, the results, how many of the printed digits count, and who printed it. */
export interface WorkedExample<Input extends string, Result extends string> {
  readonly given: Readonly<Record<Input, number>>;
  readonly gives: Partial<Readonly<Record<Result, number>>>;
  /** Largest difference allowed, relative; what the printed digits allow. */
  readonly within: number;
  readonly source: Citation;
}

/** What one input may be. `above` and `below` leave the limit itself out, `from` and `to` let it in. */
export interface Limits {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  readonly whole?: true;
}

/** Why a calculation refuses its inputs: outside its domain there is no number, only this. */
export interface Refusal {
  readonly refused: string;
  /** The same as a named defect with its numbers, where the layout of a machine can bring it about. */
  readonly defect?: Diagnostic;
}

/** A named defect with the numbers of this case. Why it matters is what is told of the defect, or more closely `why`. */
interface Refused extends Pick<Diagnostic, "says" | "found" | "limit" | "set"> {
  readonly name: CalculationDefect;
  readonly why?: string;
}

/**
 * Refuses with a named defect: an error about the whole layout (`path` is empty), which a caller that knows the
 * parameter may point at it. An amount beyond what a number can hold is left out.
 */
export function refuse({ name, says, found, limit, why = CALCULATION_DEFECTS[name].why, set }: Refused): Refusal {
  const amounts = { ...(isHeld(found) ? { found } : {}), ...(isHeld(limit) ? { limit } : {}) };
  return { refused: says, defect: { level: "error", path: [], name, says, why, set, ...amounts } };
}

function isHeld(amount: Amount | undefined): boolean {
  return amount !== undefined && Number.isFinite(amount.value);
}

/**
 * A sourced formula: numbers in, numbers out, no catalogue rows.
 *
 * `compute` returns every result as a finite number, or a `Refusal` in words when the inputs are outside `valid`.
 * `formulas` are printed as they stand and evaluated by the contract kit against `compute`, so they use only the input
 * and result symbols and the functions of formula.ts. A result that no single expression gives (a search, a case
 * distinction) has its formula in words, quoted with a leading `"`, and is not evaluated.
 */
export interface Calculation<Input extends string = string, Result extends string = string> {
  readonly name: string;
  readonly title: string;
  readonly inputs: Readonly<Record<Input, Quantity>>;
  readonly results: Readonly<Record<Result, Quantity>>;
  readonly formulas: Readonly<Record<Result, string>>;
  readonly source: Citation;
  /** Where the formula holds, and what happens outside. */
  readonly valid: string;
  /** What each input may be, where it is limited by itself; beyond it the calculation refuses. */
  readonly limits?: Readonly<Partial<Record<Input, Limits>>>;
  /** Where sources disagree on the formula, a constant or an example, and what is used; sentences without a stop. */
  readonly differs?: readonly string[];
  readonly examples: readonly WorkedExample<Input, Result>[];
  readonly compute: (inputs: Readonly<Record<Input, number>>) => Readonly<Record<NoInfer<Result>, number>> | Refusal;
}

/** Declares a calculation; the names of inputs and results are inferred and held together by the compiler. */
export function calculation<Input extends string, Result extends string>(
  spec: Calculation<Input, Result>,
): Calculation<Input, Result> {
  return {
    ...spec,
    compute: (inputs) => {
      const bad = (Object.keys(spec.inputs) as Input[]).find((key) => !Number.isFinite(inputs[key]));
      if (bad !== undefined) return notANumber(spec.inputs[bad]);
      return spec.compute(inputs);
    },
  };
}

function notANumber({ symbol, unit, meaning }: Quantity): Refusal {
  return refuse({
    name: "input-not-a-number",
    says: `${symbol} is not a number`,
    set: `${meaning} as a number${unit === "" ? "" : `, ${unit}`}`,
  });
}

export function isRefusal(outcome: object): outcome is Refusal {
  return "refused" in outcome;
}

/** Returns the results, or throws: for callers that have already checked the domain. */
export function results<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  inputs: Readonly<Record<Input, number>>,
): Readonly<Record<Result, number>> {
  const outcome = of.compute(inputs);
  if (isRefusal(outcome)) throw new RangeError(`${of.name}: ${outcome.refused}`);
  return outcome;
}
