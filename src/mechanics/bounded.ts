import {
  type Calculation,
  calculation,
  isRefusal,
  type Limits,
  type Quantity,
  type Refusal,
  refuse,
} from "../core/calculation.ts";

type Bounded<Input extends string, Result extends string> = Calculation<Input, Result> & {
  readonly limits: Readonly<Partial<Record<NoInfer<Input>, Limits>>>;
};

/**
 * Declares a calculation whose inputs have limits and whose results are always finite.
 *
 * It refuses an input outside its limits before `compute` runs, and a result that overflowed after it: an input of
 * 1e300 is a number, and its fourth power is not.
 */
export function bounded<Input extends string, Result extends string>(
  spec: Bounded<Input, Result>,
): Calculation<Input, Result> {
  const { limits } = spec;
  return calculation<Input, Result>({
    ...spec,
    compute: (inputs) => {
      for (const [key, limit] of Object.entries(limits) as [Input, Limits][]) {
        const refusal = outside(spec, spec.inputs[key], inputs[key], limit);
        if (refusal !== undefined) return refusal;
      }
      const outcome = spec.compute(inputs);
      if (isRefusal(outcome)) return outcome;
      const lost = (Object.keys(spec.results) as Result[]).find((key) => !Number.isFinite(outcome[key]));
      return lost === undefined
        ? outcome
        : { refused: `${spec.results[lost].symbol} lies beyond what a number can hold` };
    },
  });
}

type Holds = Pick<Calculation, "title" | "valid">;

function outside(of: Holds, { symbol, unit, meaning }: Quantity, value: number, limits: Limits): Refusal | undefined {
  const { above, from, below, to, whole } = limits;
  const say = (words: string, limit: number) => {
    const must = `${words} ${unit}`.trimEnd();
    return refuse({
      name: "input-out-of-range",
      says: `${symbol} is ${brief(value)} and must be ${must}`,
      found: { value, unit },
      limit: { value: limit, unit },
      why: `${of.title} holds only there: ${of.valid}`,
      set: `${meaning}: ${must}`,
    });
  };
  if (above !== undefined && !(value > above)) return say(`above ${above}`, above);
  if (from !== undefined && !(value >= from)) return say(`at least ${from}`, from);
  if (below !== undefined && !(value < below)) return say(`below ${below}`, below);
  if (to !== undefined && !(value <= to)) return say(`at most ${to}`, to);
  if (whole === true && !Number.isSafeInteger(value)) return say("a whole number", Math.round(value));
  return undefined;
}

/** Returns a number as a refusal prints it: at most five significant digits. */
export function brief(value: number): string {
  if (Math.abs(value) === Number.POSITIVE_INFINITY) return value > 0 ? "over 1e308" : "under -1e308";
  const rounded = Number(value.toPrecision(5));
  return String(Number.isFinite(rounded) ? rounded : value);
}
