import { TABLES } from "../../src/catalogue/index.ts";
import { type Citation, SOURCES, type SourceKey, type SourceKind, splitCitation } from "../../src/core/bibliography.ts";
import { disagreements } from "../../src/core/disagreement.ts";
import type { Row, Table } from "../../src/core/table.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { MATERIALS } from "../../src/printing/materials.ts";
import { NOTICE, table } from "./markdown.ts";

const ALL = [...TABLES, MATERIALS] as readonly Table[];

const KINDS: Readonly<Record<SourceKind, string>> = {
  standard: "Published standards",
  book: "Books",
  maker: "Makers' data",
  practice: "Common practice",
  geometry: "What follows by itself",
  design: "Rules of this project",
};

/** More rows than these of one table are counted, not named. */
const NAMED = 12;

/** Returns the text of docs/sources.md: the bibliography, who uses what, and where sources disagree. */
export function sourcesPage(): string {
  const keys = Object.keys(SOURCES) as SourceKey[];
  const lines = [
    "# Sources",
    "",
    `${NOTICE}`,
    "",
    "A value marked `seen` stood on a page that was read; `memory` was written down from memory. A row is `standard` when",
    "it holds for every part sold under that standard, `published` when it comes from one maker's or author's page, and",
    "`typical, measure` when it is what the trade usually sells.",
    "",
    "## Bibliography, and what uses it",
    ...(Object.keys(KINDS) as SourceKind[]).flatMap((kind) => [
      "",
      `### ${KINDS[kind]}`,
      "",
      ...keys.filter((key) => SOURCES[key].kind === kind).flatMap(entry),
    ]),
    "",
    "## Standing of the rows",
    "",
    ...table(["table", "rows", "standard", "published", "typical, measure", "seen", "memory"], ALL.map(standings)),
    "",
    ...RULE,
    "",
    ...table(["table", "row", "what others have, and what is used"], ALL.flatMap(recorded)),
    "",
    "## Where sources disagree on a calculation",
    "",
    ...table(
      ["calculation", "what differs, and what is used"],
      CALCULATIONS.flatMap(({ name, differs = [] }) => differs.map((words) => [name, words])),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

const RULE = [
  "## Where sources disagree",
  "",
  "1. A published standard goes before a maker's page, and an ISO standard before a DIN standard of the same thing.",
  "2. A maker's page goes before a seller's, and before a part that somebody measured.",
  "3. A misprint in a standard's table is replaced by what the standard's own formula gives.",
  "4. Among sources of one rank the value is used that does no harm: the lower rating, strength or temperature, the",
  "   shallower slot, the smaller land, the larger shoulder on a shaft. Where neither side is the safe one, the middle is",
  "   used.",
  "5. Where all of them are sold, the usual one is used, and the row asks for a measurement.",
  "",
  "The tests hold each row below to the rule it names, but for the usual one, which is a choice. A measurement of the item",
  "in hand, in a preset, goes before all of these.",
];

const cites = (key: SourceKey, citation: Citation | undefined) =>
  citation !== undefined && splitCitation(citation).key === key;

function entry(key: SourceKey): string[] {
  const { title } = SOURCES[key];
  const of = CALCULATIONS.filter(({ source }) => cites(key, source)).map(({ name }) => name);
  const examples = CALCULATIONS.filter(({ examples }) => examples.some(({ source }) => cites(key, source)));
  const uses = [
    ...list("calculations", of),
    ...list(
      "worked examples of",
      examples.map(({ name }) => name).filter((name) => !of.includes(name)),
    ),
    ...list(
      "rows of",
      ALL.flatMap((one) => rowsOf(key, one)),
    ),
    ...list(
      "columns of",
      ALL.flatMap((one) => columnsOf(key, one)),
    ),
  ];
  return [`- \`${key}\`: ${title.replace(/\.$/, "")}.`, ...(uses.length === 0 ? ["  - nothing so far"] : uses)];
}

const list = (head: string, items: readonly string[]) =>
  items.length === 0 ? [] : [`  - ${head} ${items.join(", ")}`];

function rowsOf(key: SourceKey, { name, rows }: Table): string[] {
  const own = rows.filter(({ source }) => cites(key, source));
  if (own.length === 0) return [];
  if (own.length === rows.length) return [`${name} (all ${rows.length})`];
  const named = own.length > NAMED ? `${own.length} of ${rows.length}` : own.map((row) => row.key).join("; ");
  return [`${name} (${named})`];
}

function columnsOf(key: SourceKey, { name, fields }: Table): string[] {
  const own = Object.values(fields).filter(({ source }) => cites(key, source));
  return own.length === 0 ? [] : [`${name} (${own.map(({ symbol }) => `\`${symbol}\``).join(", ")})`];
}

function standings({ name, rows }: Table): string[] {
  const count = (holds: (row: Row) => boolean) => String(rows.filter(holds).length);
  return [
    name,
    String(rows.length),
    count(({ standing }) => standing === "standard"),
    count(({ standing }) => standing === "published"),
    count(({ standing }) => standing === "typical"),
    count(({ from }) => from === "seen"),
    count(({ from }) => from === "memory"),
  ];
}

function recorded(one: Table): string[][] {
  return one.rows.flatMap((row) => disagreements(one, row).map((words) => [one.name, row.key, words]));
}
