import { type Calculation, isRefusal } from "../../../core/calculation.ts";

/** What a calculation gives when it refuses: so much that the check on it reports an error. */
export const BEYOND = 1e6;

/** Returns one result of a calculation, or what stands for a refusal. Units: those of the result. */
export function outcomeOf<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  result: NoInfer<Result>,
  inputs: Readonly<Record<Input, number>>,
  refused = BEYOND,
): number {
  const outcome = of.compute(inputs);
  return isRefusal(outcome) ? refused : outcome[result];
}
