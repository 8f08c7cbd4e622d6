import { SOURCES, splitCitation } from "../../core/bibliography.ts";
import { disagreements } from "../../core/disagreement.ts";
import type { Row, Standing, Table } from "../../core/table.ts";
import { grid } from "../explain/grid.ts";
import { hanging } from "../explain/hanging.ts";
import { tableBlocks } from "./table-blocks.ts";

/** More notes than these are left to the pages of the rows. */
const FEW = 8;

const STANDINGS: Readonly<Record<Standing, string>> = {
  standard: "holds for every part sold under the standard",
  published: "from one maker's or author's page",
  typical: "what is usually sold: measure your own",
};

/** Returns a table, or some of its rows: sketch, columns, what the symbols mean, and where the numbers come from. */
export function tableLines(table: Table, rows: readonly Row[]): string[] {
  const sources = [...new Set(rows.map(({ source }) => splitCitation(source).key))];
  const standings = (Object.keys(STANDINGS) as Standing[]).filter((one) => rows.some((row) => row.standing === one));
  const meanings = Object.entries(table.fields).map(([name, { symbol, meaning }]) => [symbol, name, meaning]);
  return [
    ...sketchLines(table),
    ...tableBlocks(table, rows, sources).flatMap((block) => [...block, ""]),
    ...grid(["symbol", "field", "meaning"], meanings),
    "",
    ...sources.flatMap((key, index) => hanging(`  ${`[${index + 1}]`.padEnd(11)}`, SOURCES[key].title)),
    ...standings.flatMap((one) => hanging(`  ${one.padEnd(11)}`, STANDINGS[one])),
    ...(rows.some(({ from }) => from === "seen") ? ["  seen       read off the source"] : []),
    ...(rows.some(({ from }) => from === "memory") ? ["  memory     written down from memory"] : []),
    ...noteLines(table, rows),
  ];
}

/** Returns the drawing with a blank line below; nothing when there is none. */
export function sketchLines({ sketch }: Table): string[] {
  const drawing = sketch.replace(/\s+$/, "");
  return drawing === "" ? [""] : [...drawing.split("\n"), ""];
}

/** What is said about a row besides its values: its note, and where sources disagree. */
const remarks = (table: Table, row: Row) => [
  ...(row.note === undefined ? [] : [row.note]),
  ...disagreements(table, row),
];

/** Returns the notes, equal ones once; where they are many, only how to see them. */
function noteLines(table: Table, rows: readonly Row[]): string[] {
  const keys = new Map<string, string[]>();
  for (const row of rows) {
    for (const note of remarks(table, row)) keys.set(note, [...(keys.get(note) ?? []), row.key]);
  }
  const notes = [...keys];
  if (notes.length === 0) return [];
  if (notes.length > FEW || notes.some(([, noted]) => noted.length > FEW)) {
    const count = rows.filter((row) => remarks(table, row).length > 0).length;
    return ["", `  ${count} rows have a note: tramwright stock ${table.name} <${table.item}> shows it`];
  }
  return ["", ...notes.flatMap(([note, noted]) => hanging("  note on ", `${noted.join(", ")}: ${note}`))];
}
