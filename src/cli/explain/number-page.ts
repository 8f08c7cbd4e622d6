import { type Citation, SOURCES, spell } from "../../core/bibliography.ts";
import { isWords, substitute } from "../../core/formula.ts";
import type { Unit } from "../../core/unit.ts";
import type { AnyFamily, Design, Explained } from "../../parts/family.ts";
import { grid } from "./grid.ts";
import { hanging } from "./hanging.ts";
import { type NumberInput, numberInputs } from "./number-inputs.ts";
import type { Page } from "./page.ts";
import { shown } from "./shown.ts";

/** Returns a derived number as formula, substitution, result, where its inputs come from, and its source. */
export function numberPage(family: AnyFamily, design: Design, quantity: Explained, preset: boolean): Page {
  const { key, symbol, value, unit, meaning, formula, source } = quantity;
  const name = `${family.name}.${key}`;
  const inputs = numberInputs(family, design, formula);
  const from = inputs.length === 0 ? [] : ["", ...inputLines(inputs)];
  return {
    name,
    title: `${name}: ${meaning}`,
    lines: [
      ...steps(symbol, formula, inputs, value, unit),
      ...from,
      "",
      ...hanging("source  ", spell(source as Citation)),
      ...legend(inputs, source),
      ...hanging("given   ", preset ? "the preset's parameters" : "the defaults; --preset <file> takes your own"),
    ],
    data: { kind: "number", family: family.name, ...quantity, inputs },
  };
}

/** Returns the formula, the formula with its numbers, and the result, equals signs in one column. */
export function steps(
  symbol: string,
  formula: string,
  inputs: readonly Pick<NumberInput, "symbol" | "value" | "unit">[],
  value: number,
  unit: Unit,
): string[] {
  const lead = `  ${symbol} = `;
  const next = `${" ".repeat(lead.length - 2)}= `;
  const result = `${shown(value, unit)} ${unit}`.trimEnd();
  if (isWords(formula)) return [...hanging(lead, formula.replaceAll('"', "")), `${next}${result}`];
  const filled = withNumbers(formula, inputs);
  const between = filled === formula || filled === result.split(" ")[0] ? [] : hanging(next, filled);
  const first = formula === result.split(" ")[0] ? [] : hanging(lead, formula);
  return [...first, ...between, `${first.length === 0 ? lead : next}${result}`];
}

/** Returns the formula with numbers for symbols; each is rounded as its own unit asks. */
function withNumbers(formula: string, inputs: readonly Pick<NumberInput, "symbol" | "value" | "unit">[]): string {
  const words = new Map(inputs.map(({ value, unit }) => [value, shown(value, unit)]));
  const values = new Map(inputs.map(({ symbol, value }) => [symbol, value]));
  return substitute(formula, values, (value) => words.get(value) ?? shown(value));
}

function inputLines(inputs: readonly NumberInput[]): string[] {
  return grid(
    ["with", ">value", "unit", "from", "meaning"],
    inputs.map(({ symbol, value, unit, from, meaning }) => [symbol, shown(value, unit), unit, from, meaning]),
  );
}

/** Returns the titles of the sources that the inputs name by key, that of the number itself left out. */
function legend(inputs: readonly NumberInput[], own: string): string[] {
  const keys = [...new Set(inputs.flatMap(({ source }) => source ?? []))];
  return keys
    .filter((key) => key !== own)
    .flatMap((key, index) => hanging(index === 0 ? "values  " : "        ", `${key}: ${SOURCES[key].title}`));
}
