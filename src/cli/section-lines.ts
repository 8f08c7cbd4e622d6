import { type Fact, marginOf, type Section } from "../stage/index.ts";
import { hanging } from "./explain/hanging.ts";
import { shown } from "./explain/shown.ts";
import type { Paint } from "./io.ts";
import { columns, lasting, SCREEN, wrap } from "./screen.ts";

const HEADS = [
  { head: "what" },
  { head: "value", right: true },
  { head: "unit" },
  { head: "limit" },
  { head: "margin", right: true },
  { head: "name" },
];

/** The narrowest column in which it can be told what a number is. */
const NARROWEST = 24;

/** Returns one block of a machine's report: its title, a table of its numbers, and what is no number. */
export function sectionLines({ title, facts, lines = [] }: Section, paint: Paint): string[] {
  return [
    paint("bold", title),
    ...(facts.length === 0 ? [] : factTable(facts)),
    ...lines.flatMap((words) => hanging("  ", words)),
  ];
}

function factTable(facts: readonly Fact[]): string[] {
  const cells = facts.map((fact) => [reported(fact), fact.unit, limitWords(fact), marginWords(fact)]);
  const keys = facts.map(({ key }) => key);
  const widest = (head: string, words: readonly string[]) => Math.max(head.length, ...words.map((word) => word.length));
  const numbers = HEADS.slice(1, -1).map(
    ({ head }, index) =>
      widest(
        head,
        cells.map((row) => row[index] ?? ""),
      ) + 2,
  );
  const left = SCREEN - 2 - numbers.reduce((sum, width) => sum + width, 0);
  const beside = left - widest("name", keys) - 2;
  // Names that leave no room for words stand on lines of their own.
  const own = beside < NARROWEST;
  const labels = facts.map(({ label }) => wrap(label, own ? left - 2 : beside));
  const rows = cells.map((row, index) => [labels[index]?.[0] ?? "", ...row, ...(own ? [] : [keys[index] ?? ""])]);
  const [head = "", rule = "", ...lines] = columns(own ? HEADS.slice(0, -1) : HEADS, rows);
  const below = (index: number) => [...(labels[index]?.slice(1) ?? []), ...(own ? [`name: ${keys[index]}`] : [])];
  return [head, rule, ...lines.flatMap((line, index) => [line, ...below(index).map((more) => `  ${more}`)])].map(
    (line) => `  ${line}`.trimEnd(),
  );
}

const reported = ({ value, unit }: Fact) => lasting(value, unit) ?? shown(value, unit);

function limitWords({ limit, unit }: Fact): string {
  return limit === undefined ? "" : `${limit.kind} ${shown(limit.value, unit)}`;
}

/** The margin as a share of the limit; beyond ten times the limit its size tells nothing. */
function marginWords(fact: Fact): string {
  const margin = marginOf(fact);
  if (margin === undefined || !Number.isFinite(margin)) return "";
  if (margin > 10) return "> 10 x";
  return `${margin < 0 ? "-" : ""}${Math.round(Math.abs(margin) * 100)} %`;
}
