import { spell } from "../../core/bibliography.ts";
import type { Calculation } from "../../core/calculation.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import { type Fact, marginOf, type Stage } from "../../stage/index.ts";
import { searchOf } from "../../stage/searches.ts";
import { factAccount } from "./fact-account.ts";
import { grid } from "./grid.ts";
import { hanging } from "./hanging.ts";
import { steps } from "./number-page.ts";
import type { Page } from "./page.ts";
import { shown } from "./shown.ts";
import { SOLVER_WORDS, type SolverWords } from "./solver-words.ts";

/** Returns the page of every number of a machine that has the name: one, since names are unique in it. */
export function factPages(stage: Stage, name: string): Page[] {
  return stage.sections.flatMap(({ title, facts }) =>
    facts.filter(({ key }) => key === name).map((fact) => factPage(fact, title, factAccount(stage, fact))),
  );
}

/** Returns the names of all numbers of a machine. */
export function factNames(stage: Stage): string[] {
  return stage.sections.flatMap(({ facts }) => facts.map(({ key }) => key));
}

/** Returns a number of a machine as formula, substitution, result, what went in, source and limit. */
function factPage(fact: Fact, section: string, account: readonly string[] | undefined): Page {
  const { key, label, value, unit, from } = fact;
  const of = CALCULATIONS.find((one) => one.name === from?.calculation);
  const solver = Object.hasOwn(SOLVER_WORDS, from?.calculation ?? "")
    ? SOLVER_WORDS[from?.calculation as keyof typeof SOLVER_WORDS]
    : undefined;
  const origin =
    from !== undefined && of !== undefined
      ? worked(fact, of, from)
      : from !== undefined && solver !== undefined
        ? solved(fact, solver, from)
        : [
            `  ${shown(value, unit)} ${unit}`.trimEnd(),
            ...(account === undefined ? ["", "source  placed or counted: no formula"] : []),
          ];
  return {
    name: key,
    title: `${key}: ${label}`,
    lines: [
      ...origin,
      ...(account === undefined ? [] : ["", ...account, ""]),
      ...limitLines(fact),
      `block   ${section}`,
    ],
    data: { kind: "fact", section, ...fact, margin: marginOf(fact) ?? null, source: (of ?? solver)?.source ?? null },
  };
}

function worked(
  { value, unit }: Fact,
  of: Calculation,
  { result, inputs, calculation }: NonNullable<Fact["from"]>,
): string[] {
  const results = of.compute(inputs) as Readonly<Record<string, number>>;
  const given = Object.entries(of.inputs).map(([key, { symbol, unit, meaning }]) => ({
    symbol,
    unit,
    meaning,
    value: inputs[key] ?? Number.NaN,
  }));
  const others = Object.entries(of.results).flatMap(([key, { symbol, unit }]) => {
    const found = results[key];
    return found === undefined ? [] : [{ symbol, unit, value: found }];
  });
  const symbol = of.results[result]?.symbol ?? result;
  return [
    ...steps(symbol, of.formulas[result] ?? "", [...given, ...others], value, unit),
    "",
    ...grid(
      ["with", ">value", "unit", "meaning"],
      given.map((one) => [one.symbol, shown(one.value, one.unit), one.unit, one.meaning]),
    ),
    "",
    ...hanging("source  ", spell(of.source)),
    ...hanging("more    ", `tramwright explain ${calculation}`),
  ];
}

/** Returns the page of a search by its name, alone. */
export function searchPages(asked: string): Page[] {
  const search = searchOf(asked);
  if (search === undefined) return [];
  const { name, title, takes, gives, how, valid, source } = search;
  const lines = [
    ...hanging("takes   ", takes),
    ...hanging("gives   ", gives),
    ...hanging("how     ", how),
    ...hanging("valid   ", valid),
    ...hanging("source  ", spell(source)),
  ];
  const data = { kind: "search", name, title, takes, gives, how, valid, source };
  return [{ name, title: `${name}: ${title}`, lines, data }];
}

/** A number that was searched for: the result, how it is found, and what it is found from. */
function solved(
  { value, unit }: Fact,
  { how, source, units }: SolverWords,
  { result, inputs, calculation }: NonNullable<Fact["from"]>,
): string[] {
  const given = Object.entries(inputs).map(([key, input]) => {
    const own = units[key.split("_")[0] ?? ""] ?? "";
    return [key, shown(input, own), own];
  });
  return [
    `  ${result} = ${shown(value, unit)} ${unit}`.trimEnd(),
    "",
    ...grid(["with", ">value", "unit"], given),
    "",
    ...hanging("found   ", how),
    ...hanging("source  ", spell(source)),
    ...hanging("more    ", `tramwright explain ${calculation}`),
  ];
}

function limitLines(fact: Fact): string[] {
  const { limit, unit } = fact;
  if (limit === undefined) return [];
  const margin = marginOf(fact);
  const room = margin === undefined ? "" : `, margin ${(margin * 100).toFixed(0)} %`;
  return [`limit   ${limit.kind} ${`${shown(limit.value, unit)} ${unit}`.trimEnd()}${room}`];
}
