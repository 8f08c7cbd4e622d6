import { type Calculation, isRefusal } from "../core/calculation.ts";

/** Returns what a calculation gives, or the stand-in where it refuses: a check then names what is wrong. */
export function orElse<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  inputs: Readonly<Record<Input, number>>,
  standIn: Readonly<Record<NoInfer<Result>, number>>,
): Readonly<Record<Result, number>> {
  const outcome = of.compute(inputs);
  return isRefusal(outcome) ? standIn : outcome;
}
