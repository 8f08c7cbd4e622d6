import type { Diagnostic, Level } from "../../core/diagnostic.ts";
import type { Check } from "../../parts/check.ts";
import type { AnyFamily } from "../../parts/family.ts";
import { printerSchema } from "../../printing/printer.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";
import { presetLines } from "./preset-lines.ts";
import { shown } from "./shown.ts";

type Change = Readonly<Record<string, unknown>>;

const LEVELS: readonly Level[] = ["error", "warning", "note"];

/** Returns a check as the reason for it and, for each level, a preset that trips it and what the program then says. */
export function checkPage(family: AnyFamily, check: Check<never, never>): Page {
  const name = `${family.name}.${check.name}`;
  const examples = LEVELS.flatMap((level) => {
    const change = check.trips[level];
    return change === undefined ? [] : [{ level, change, found: tripped(family, check.name, change) }];
  });
  const { path, why, neverAccepted = false } = check;
  return {
    name,
    title: `${check.name}: a check of ${family.name}`,
    lines: [
      ...hanging("why     ", why),
      ...(path.length === 0 ? [] : hanging("look at ", path.join("."))),
      ...(neverAccepted ? ["excuse  none: accept: in a preset does not lift it"] : []),
      ...examples.flatMap(({ level, change, found }) => [
        "",
        `${level}, for example from`,
        ...presetLines(family.name, change).map((line) => `    ${line}`),
        ...(found === undefined ? [] : answer(found)),
      ]),
    ],
    data: {
      kind: "check",
      family: family.name,
      name: check.name,
      path,
      why,
      neverAccepted,
      examples: examples.map(({ level, change, found }) => ({ level, parameters: change, message: found ?? null })),
    },
  };
}

/** Runs the example, so that the page shows what the program really says. */
function tripped(family: AnyFamily, name: string, change: Change): Diagnostic | undefined {
  const { printer, ...parameters } = change;
  const { diagnostics } = family.design(family.schema.parse(parameters), printerSchema.parse(printer ?? {}));
  return diagnostics.find((diagnostic) => diagnostic.name === name);
}

/** Returns what was told, as lines. */
export function answer({ says, set, found, limit }: Diagnostic): string[] {
  const amount = ({ value, unit }: NonNullable<typeof found>) => `${shown(value, unit)} ${unit}`.trimEnd();
  const numbers = [
    ...(found === undefined ? [] : [`  found   ${amount(found)}`]),
    ...(limit === undefined ? [] : [`limit ${amount(limit)}`]),
  ];
  return [
    ...hanging("  says    ", says),
    ...(numbers.length === 0 ? [] : [numbers.join("     ")]),
    ...hanging("  set     ", set),
  ];
}
