import type { Citation } from "../../../core/bibliography.ts";
import type { Dimension } from "../../../core/dimension.ts";
import type { Unit } from "../../../core/unit.ts";
import type { Parameters } from "../parameters.ts";

type Formula = Dimension<Parameters>["formula"];

/** Returns the entry of a length in mm. */
export function mm(
  symbol: string,
  meaning: string,
  formula: Formula,
  source: Citation = "design-rule",
): Dimension<Parameters> {
  return { symbol, unit: "mm", meaning, formula, source };
}

/** Returns the entry of any other quantity. */
export function of(
  unit: Unit,
  symbol: string,
  meaning: string,
  formula: Formula,
  source: Citation,
): Dimension<Parameters> {
  return { symbol, unit, meaning, formula, source };
}

/** Whole layers from the bed up to at least a height. */
export const layersUpTo = (height: string) => `first + max(0, up(${height} - first, layer))`;
