import { type Citation, SOURCES, type SourceKey, splitCitation } from "../../core/bibliography.ts";
import { CALCULATIONS } from "../../mechanics/index.ts";
import { FAMILIES } from "../../parts/index.ts";
import { ALL_TABLES } from "../stock/tables.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";

const KINDS = {
  standard: "a published standard",
  book: "a book",
  maker: "makers' data",
  practice: "common practice",
  geometry: "follows by itself",
  design: "a rule of this project",
} as const;

/** Returns a source as its title, how far it goes, and everything that cites it. */
export function sourcePage(key: SourceKey): Page {
  const { kind, title } = SOURCES[key];
  const cited = citing(key);
  const rows = Object.entries(cited).filter(([, names]) => names.length > 0);
  const lines = rows.flatMap(([head, names]) => hanging(`  ${head.padEnd(13)}`, names.join(", ")));
  return {
    name: key,
    title: `${key}: ${title}`,
    lines: [`kind    ${KINDS[kind]}`, "cited by", ...(lines.length === 0 ? ["  nothing so far"] : lines)],
    data: { kind: "source", key, sourceKind: kind, title, citedBy: cited },
  };
}

function citing(key: SourceKey): Readonly<Record<string, readonly string[]>> {
  const cites = (citation: Citation) => splitCitation(citation).key === key;
  const examples = CALCULATIONS.filter((one) => one.examples.some(({ source }) => cites(source)));
  return {
    calculations: CALCULATIONS.filter(({ source }) => cites(source)).map(({ name }) => name),
    examples: examples.map(({ name }) => name),
    numbers: FAMILIES.flatMap(({ name, open }) =>
      Object.entries(open.dimensions as Readonly<Record<string, { source: Citation }>>)
        .filter(([, { source }]) => cites(source))
        .map(([dimension]) => `${name}.${dimension}`),
    ),
    tables: ALL_TABLES.flatMap(({ name, rows, fields }) => {
      const count = rows.filter(({ source }) => cites(source)).length;
      const columns = Object.values(fields).filter(({ source }) => source !== undefined && cites(source));
      const symbols = columns.map(({ symbol }) => symbol).join(", ");
      return [
        ...(count === 0 ? [] : [`${name} (${count} of ${rows.length} rows)`]),
        ...(columns.length === 0 ? [] : [`${name} (${symbols})`]),
      ];
    }),
  };
}
