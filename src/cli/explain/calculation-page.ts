import { spell } from "../../core/bibliography.ts";
import { type Calculation, isRefusal, type Quantity, type WorkedExample } from "../../core/calculation.ts";
import { grid } from "./grid.ts";
import { hanging } from "./hanging.ts";
import { steps } from "./number-page.ts";
import type { Page } from "./page.ts";
import { shown } from "./shown.ts";

type Example = WorkedExample<string, string>;

/** Returns a calculation as formulas, inputs, results, validity, source and examples worked through with numbers. */
export function calculationPage(one: Calculation): Page {
  const { name, title, inputs, results, formulas, valid, source } = one;
  const rows = (of: Readonly<Record<string, Quantity>>, role: string) =>
    Object.values(of).map(({ symbol, unit, meaning }, index) => [index === 0 ? role : "", symbol, unit, meaning]);
  return {
    name,
    title: `${name}: ${title}`,
    lines: [
      ...Object.entries(formulas).flatMap(([key, formula]) =>
        hanging(`  ${results[key]?.symbol ?? key} = `, formula.replaceAll('"', "")),
      ),
      "",
      ...grid(["", "symbol", "unit", "meaning"], [...rows(inputs, "takes"), ...rows(results, "gives")]),
      "",
      ...hanging("valid   ", valid),
      ...hanging("source  ", spell(source)),
      ...(one.differs ?? []).flatMap((words) => hanging("differs ", words)),
      ...covering(one).flatMap((example) => worked(one, example)),
    ],
    data: { kind: "calculation", name, title, inputs, results, formulas, valid, source, examples: one.examples },
  };
}

/** Returns as few of the examples, in their order, as show every result; those of the same inputs are one. */
function covering({ examples }: Calculation): Example[] {
  const kept: Example[] = [];
  for (const example of examples) {
    const shownBefore = kept.flatMap(({ gives }) => Object.keys(gives));
    if (Object.keys(example.gives).every((key) => shownBefore.includes(key))) continue;
    const alike = kept.findIndex(({ given }) => JSON.stringify(given) === JSON.stringify(example.given));
    const twin = kept[alike];
    if (twin === undefined) kept.push(example);
    else kept[alike] = { ...twin, gives: { ...example.gives, ...twin.gives } };
  }
  return kept;
}

/** Returns one example: who printed it, what is given, and each result step by step. */
function worked(one: Calculation, { given, gives, source }: Example): string[] {
  const outcome = one.compute(given);
  if (isRefusal(outcome)) return [];
  const valued = (of: Readonly<Record<string, Quantity>>, values: Readonly<Record<string, number>>) =>
    Object.entries(of).map(([key, { symbol, unit }]) => ({ symbol, unit, value: values[key] ?? Number.NaN }));
  const inputs = valued(one.inputs, given);
  const all = [...inputs, ...valued(one.results, outcome)];
  const said = inputs.map(({ symbol, value, unit }) => `${symbol} = ${shown(value, unit)} ${unit}`.trim());
  return [
    "",
    ...hanging("worked  ", said.join(", ")),
    ...hanging("        ", `after ${spell(source)}`),
    ...Object.entries(one.results).flatMap(([key, { symbol, unit }]) => {
      const printed = gives[key];
      if (printed === undefined) return [];
      const value = outcome[key] as number;
      const differs = shown(printed, unit) !== shown(value, unit);
      return [
        ...steps(symbol, one.formulas[key] ?? "", all, value, unit),
        ...(differs ? [`    (the example has ${`${shown(printed, unit)} ${unit}`.trimEnd()})`] : []),
      ];
    }),
  ];
}
