import { SOURCES, type SourceKey, spell, splitCitation } from "../../core/bibliography.ts";
import type { Calculation } from "../../core/calculation.ts";
import type { Level } from "../../core/diagnostic.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import type { Check } from "../../parts/check.ts";
import type { AnyFamily } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import { type Printer, printerSchema } from "../../printing/printer.ts";
import { columns, figure, wrap } from "../screen.ts";

const WIDTH = 96;

/** Returns a calculation as inputs, formulas, validity, source and a worked example. */
export function calculationLines({
  name,
  title,
  inputs,
  results,
  formulas,
  valid,
  source,
  examples,
}: Calculation): string[] {
  const quantities = [...Object.values(inputs), ...Object.values(results)];
  const example = examples[0];
  const pairs = (values: Partial<Readonly<Record<string, number>>>, of: typeof inputs) =>
    Object.entries(values)
      .map(([key, value]) => `${of[key]?.symbol ?? key} = ${figure(value ?? Number.NaN)} ${of[key]?.unit ?? ""}`.trim())
      .join(", ");
  return [
    `${name}: ${title}`,
    ...Object.entries(formulas).flatMap(([key, formula]) =>
      wrap(`${results[key]?.symbol ?? key} = ${formula.replaceAll('"', "")}`, WIDTH - 2).map((line) => `  ${line}`),
    ),
    "",
    ...columns(
      [{ head: "  with" }, { head: "unit" }, { head: "meaning" }],
      quantities.map(({ symbol, unit, meaning }) => [`  ${symbol}`, unit, meaning]),
    ),
    "",
    ...wrap(`holds for: ${valid}`, WIDTH),
    ...wrap(`source: ${spell(source)}`, WIDTH),
    ...(example === undefined
      ? []
      : wrap(
          `worked: ${pairs(example.given, inputs)} gives ${pairs(example.gives, results)} (${spell(example.source)})`,
          WIDTH,
        )),
  ];
}

/** Returns a check as why, and for each level an example that trips it with the message it gives. */
export function checkLines(family: AnyFamily, check: Check<never, never>): string[] {
  const examples = Object.entries(check.trips) as [Level, Readonly<Record<string, unknown>>][];
  return [
    `${check.name}: a check of ${family.name}`,
    ...wrap(check.why, WIDTH),
    ...examples.flatMap(([level, change]) => [
      "",
      `${level}, for example with`,
      ...snippet(family, change),
      ...answer(family, check.name, change),
    ]),
    ...(check.neverAccepted === true ? ["", "No reason can excuse it."] : []),
  ];
}

function snippet(family: AnyFamily, change: Readonly<Record<string, unknown>>): string[] {
  const { printer, ...parameters } = change;
  const block = (name: string, values: object) => [
    `    ${name}:`,
    ...Object.entries(values).map(([key, value]) => `      ${key}: ${flow(value)}`),
  ];
  const own =
    Object.keys(parameters).length === 0 ? ["    # nothing: the defaults do"] : block("parameters", parameters);
  return [
    `    part: ${family.name}`,
    ...own,
    ...(printer === undefined ? [] : block("printer settings", printer as object)),
  ];
}

/** Returns a value as YAML on one line. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(", ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  return `{ ${Object.entries(value)
    .map(([key, one]) => `${key}: ${flow(one)}`)
    .join(", ")} }`;
}

/** Runs the example, so that the page shows what the program really says. */
function answer(
  family: AnyFamily,
  name: string,
  { printer, ...parameters }: Readonly<Record<string, unknown>>,
): string[] {
  const settings: Printer = printerSchema.parse(printer ?? {});
  const { diagnostics } = family.design(family.schema.parse(parameters), settings);
  return diagnostics
    .filter((diagnostic) => diagnostic.name === name)
    .slice(0, 1)
    .flatMap(({ says, set }) =>
      [...wrap(`says    ${says}`, WIDTH - 2), ...wrap(`set     ${set}`, WIDTH - 2)].map((line) => `  ${line}`),
    );
}

/** Returns a source as title, and what cites it. */
export function sourceLines(key: SourceKey): string[] {
  const { kind, title } = SOURCES[key];
  const cites = CALCULATIONS.filter(({ source }) => splitCitation(source).key === key).map(({ name }) => name);
  const parts = FAMILIES.flatMap(({ name, open }) =>
    Object.entries(open.dimensions as Record<string, { source: string }>)
      .filter(([, { source }]) => splitCitation(source as never).key === key)
      .map(([dimension]) => `${name}.${dimension}`),
  );
  return [
    ...wrap(`${key} (${kind}): ${title}`, WIDTH),
    ...wrap(`cited by: ${[...cites, ...parts].join(", ") || "hardware tables only"}`, WIDTH),
  ];
}
