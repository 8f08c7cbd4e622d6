import type { Citation } from "./bibliography.ts";
import type { Unit } from "./unit.ts";

/**
 * What one number of a part is called and where it comes from.
 *
 * `formula` is printed as it stands and is also evaluated by the contract kit, so it is written in plain ASCII
 * arithmetic over the symbols of the part: `2 * R_h + 1`, `max(a, b)`, `up(x, layer)`. The functions it may use are
 * listed in formula.ts. A formula that depends on a choice is a function of the parameters that returns the text.
 */
export interface Dimension<Parameters = never> {
  readonly symbol: string;
  readonly unit: Unit;
  readonly meaning: string;
  readonly formula: string | ((parameters: Parameters) => string);
  readonly source: Citation;
}

type NumberKeys<Derived> = {
  [Key in keyof Derived]-?: Derived[Key] extends number ? Key : never;
}[keyof Derived];

/** One entry per derived number: leaving one out does not compile. */
export type Dimensions<Parameters, Derived> = {
  readonly [Key in NumberKeys<Derived>]: Dimension<Parameters>;
};

/** A number that a formula may name but that nobody derives: a parameter or a value of a hardware row. */
export interface Given {
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  readonly meaning: string;
  readonly source: string;
}
