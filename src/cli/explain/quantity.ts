import { SOURCES, spell } from "../../core/bibliography.ts";
import { isWords, substitute, symbolsOf } from "../../core/formula.ts";
import type { Design, Explained } from "../../parts/family.ts";
import { amount, columns, figure, wrap } from "../screen.ts";

const WIDTH = 96;

/** Returns a derived number as formula, substitution, result, the inputs it came from and its source. */
export function quantityLines(design: Design, quantity: Explained): string[] {
  const { symbol, value, unit, meaning, formula, source, key } = quantity;
  const inputs = inputsOf(design, formula);
  const values = new Map(inputs.map((input) => [input.symbol, input.value]));
  const steps = isWords(formula)
    ? wrap(`${symbol} is found so: ${formula.replaceAll('"', "")}`, WIDTH)
    : [
        `${symbol} = ${formula}`,
        `${" ".repeat(symbol.length)} = ${substitute(formula, values, (number) => figure(number, "mm"))}`,
      ];
  return [
    ...wrap(`${design.family}.${key}: ${meaning}`, WIDTH),
    ...steps.flatMap((step) => wrap(step, WIDTH).map((line, index) => (index === 0 ? `  ${line}` : `      ${line}`))),
    `  ${" ".repeat(symbol.length)} = ${amount(value, unit)}`,
    "",
    ...columns(
      [{ head: "  with" }, { head: "value", right: true }, { head: "unit" }, { head: "from" }, { head: "meaning" }],
      inputs.map((input) => [
        `  ${input.symbol}`,
        figure(input.value, input.unit),
        input.unit,
        input.from,
        input.meaning,
      ]),
    ),
    "",
    ...wrap(`source: ${spell(source as never)}`, WIDTH),
  ];
}

interface Input {
  readonly symbol: string;
  readonly value: number;
  readonly unit: Explained["unit"];
  readonly meaning: string;
  readonly from: string;
}

/** Returns what the formula names: derived numbers of the part, parameters and hardware values. */
function inputsOf(design: Design, formula: string): Input[] {
  return symbolsOf(formula).flatMap((symbol) => {
    const derived = design.dimensions.find((dimension) => dimension.symbol === symbol);
    if (derived !== undefined) return [{ ...derived, from: derived.key }];
    const given = design.givens.find((one) => one.symbol === symbol);
    return given === undefined ? [] : [{ ...given, from: sourceWords(given.source) }];
  });
}

const sourceWords = (source: string) =>
  (source.split(": ")[0] as string) in SOURCES ? (source.split(": ")[0] as string) : source;
