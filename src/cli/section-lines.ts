import { type Fact, marginOf, type Section } from "../stage/index.ts";
import { hanging } from "./explain/hanging.ts";
import { shown } from "./explain/shown.ts";
import type { Paint } from "./io.ts";
import { columns, SCREEN, wrap } from "./screen.ts";

const HEADS = [
  { head: "what" },
  { head: "value", right: true },
  { head: "unit" },
  { head: "limit" },
  { head: "margin", right: true },
  { head: "name" },
];

/** The narrowest that what a number is may be told in; beyond it the names go on below themselves. */
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
  const cells = facts.map((fact) => [
    shown(fact.value, fact.unit),
    fact.unit,
    limitWords(fact),
    marginWords(fact),
    fact.key,
  ]);
  const widest = (index: number, head: string) => Math.max(head.length, ...cells.map((row) => row[index]?.length ?? 0));
  const rest = HEADS.slice(1).reduce((sum, { head }, index) => sum + widest(index, head) + 2, 0);
  const room = Math.max(NARROWEST, SCREEN - 2 - rest);
  const rows = facts.flatMap(({ label }, index) => {
    const [first = "", ...more] = wrap(label, room);
    return [[first, ...(cells[index] ?? [])], ...more.map((line) => [`  ${line}`])];
  });
  return columns(HEADS, rows).map((line) => `  ${line}`.trimEnd());
}

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
