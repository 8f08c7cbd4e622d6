import { SOURCES, type SourceKey } from "../../core/bibliography.ts";
import { isWords, symbolsOf } from "../../core/formula.ts";
import type { Unit } from "../../core/unit.ts";
import type { AnyFamily, Design } from "../../parts/family.ts";
import { printerSchema } from "../../printing/printer.ts";
import { parameterFields } from "./parameter-field.ts";

/** One symbol of a formula: its value, and who says so. */
export interface NumberInput {
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  readonly meaning: string;
  /** `screw-foot.seat`, `parameter wall`, `printer setting layer`, or the key of a source. */
  readonly from: string;
  /** The source to spell out, where the value is from one. */
  readonly source?: SourceKey;
}

/** Returns what a formula names, in its order: derived numbers of the part, parameters, printer settings, hardware. */
export function numberInputs(family: AnyFamily, design: Design, formula: string): NumberInput[] {
  const symbols = symbolsOf(formula).filter((symbol) => !isWords(formula) || isUnlikeWord(symbol));
  return symbols.flatMap((symbol) => {
    const derived = design.dimensions.find((dimension) => dimension.symbol === symbol);
    if (derived !== undefined) {
      const { value, unit, meaning, key } = derived;
      return [{ symbol, value, unit, meaning, from: `${family.name}.${key}` }];
    }
    const given = design.givens.find((one) => one.symbol === symbol);
    if (given === undefined) return [];
    const { value, unit, meaning } = given;
    return [{ symbol, value, unit, meaning, ...origin(family, symbol, given.source) }];
  });
}

/** A formula in words holds words; only a symbol that could not be one of them is taken for a symbol. */
const isUnlikeWord = (symbol: string) => /[_0-9]|^[a-z]+[A-Z]|^[B-Z][A-Z]?$/.test(symbol);

function origin(family: AnyFamily, symbol: string, source: string): Pick<NumberInput, "from" | "source"> {
  const key = source.split(": ")[0] ?? "";
  if (key in SOURCES) return { from: source, source: key as SourceKey };
  const keyOf = (schema: unknown) => parameterFields(schema, {}).find((field) => field.symbol === symbol)?.key;
  const parameter = keyOf(family.schema);
  if (parameter !== undefined) return { from: `parameter ${parameter}` };
  const setting = keyOf(printerSchema);
  return { from: setting === undefined ? source : `printer setting ${setting}` };
}
