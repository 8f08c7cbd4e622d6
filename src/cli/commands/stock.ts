import { TABLES } from "../../catalogue/index.ts";
import { SOURCES, spell, splitCitation } from "../../core/bibliography.ts";
import { nearest } from "../../core/nearest.ts";
import { findRow, type Row, type Table } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import { columns, figure, wrap } from "../screen.ts";

const WIDTH = 98;

/** Every table a builder may look into, in the order they are listed. */
const ALL = [...TABLES, MATERIALS] as unknown as readonly Table[];

interface StockArgs {
  readonly table?: string;
  readonly row?: string;
  readonly filters: Readonly<Record<string, string>>;
  readonly json: boolean;
}

/** Prints the list of tables, one table, or one row. Returns the exit code. */
export function stock({ table: name, row: key, filters, json }: StockArgs, io: Io): number {
  if (name === undefined) return list(json, io);
  const table = ALL.find((candidate) => candidate.name === name);
  if (table === undefined)
    throw trouble(
      `there is no table ${name}; ${hint(
        name,
        ALL.map((one) => one.name),
      )}`,
    );
  if (key === undefined) return whole(table, table.rows.filter(matching(table, filters)), json, io);
  const found = findRow(table, key);
  if (found === undefined)
    throw trouble(
      `${table.name} has no row ${key}; ${hint(
        key,
        table.rows.map((one) => one.key),
      )}`,
    );
  if (json) io.out(JSON.stringify(found, undefined, 2));
  else for (const line of single(table, found)) io.out(line);
  return EXIT.done;
}

function hint(word: string, known: readonly string[]): string {
  const close = nearest(word, known);
  return close === undefined
    ? `there are ${known.slice(0, 20).join(", ")}${known.length > 20 ? " ..." : ""}`
    : `the nearest is ${close}`;
}

function list(json: boolean, io: Io): number {
  const rows = ALL.map(({ name, title, rows: all }) => ({ name, title, rows: all.length }));
  if (json) io.out(JSON.stringify(rows, undefined, 2));
  else {
    const heads = [{ head: "table" }, { head: "rows", right: true }, { head: "what" }];
    for (const line of columns(
      heads,
      rows.map((row) => [row.name, String(row.rows), row.title]),
    ))
      io.out(line);
  }
  return EXIT.done;
}

function whole(table: Table, rows: readonly Row[], json: boolean, io: Io): number {
  if (json) {
    io.out(JSON.stringify(rows, undefined, 2));
    return EXIT.done;
  }
  io.out(table.title);
  for (const line of table.sketch.split("\n")) io.out(line);
  const sources = [...new Set(rows.map(({ source }) => splitCitation(source).key))];
  for (const block of blocks(table, rows, sources)) {
    for (const line of block) io.out(line);
    io.out("");
  }
  for (const [name, field] of Object.entries(table.fields))
    io.out(`  ${field.symbol.padEnd(10)} ${name}: ${field.meaning}`);
  sources.forEach((key, index) => {
    for (const line of wrap(`[${index + 1}] ${SOURCES[key].title}`, WIDTH)) io.out(line);
  });
  io.out("standard: holds for every part sold under it; published: one maker's page; typical: measure your own");
  return EXIT.done;
}

/** Returns the table as blocks of columns that fit the screen; each block begins with the key. */
function blocks(table: Table, rows: readonly Row[], sources: readonly string[]): string[][] {
  const fields = Object.entries(table.fields).map(([name, { symbol, unit }]) => ({
    head: unit === "" ? symbol : `${symbol} ${unit}`,
    cells: rows.map(({ values }) => cell(values[name], unit)),
  }));
  const last = [
    { head: "standing", cells: rows.map(({ standing }) => (standing === "typical" ? "typical, measure" : standing)) },
    {
      head: "source",
      cells: rows.map(({ source, from }) => `[${sources.indexOf(splitCitation(source).key) + 1}] ${from}`),
    },
  ];
  const keys = { head: table.item, cells: rows.map(({ key }) => key) };
  const size = ({ head, cells }: typeof keys) => Math.max(head.length, ...cells.map((text) => text.length)) + 2;
  const groups: (typeof keys)[][] = [[keys]];
  for (const column of [...fields, ...last]) {
    const group = groups.at(-1) ?? [];
    const used = group.reduce((sum, one) => sum + size(one), 0);
    if (used + size(column) > WIDTH) groups.push([keys, column]);
    else group.push(column);
  }
  return groups.map((group) =>
    columns(
      group.map(({ head }, index) => ({ head, right: index > 0 && !["standing", "source"].includes(head) })),
      rows.map((_, index) => group.map(({ cells }) => cells[index] ?? "")),
    ),
  );
}

const cell = (value: unknown, unit: string) =>
  typeof value === "number" ? figure(value, unit as never) : String(value ?? "");

function single(table: Table, { key, values, source, standing, from, note }: Row): string[] {
  const rows = Object.entries(table.fields).map(([name, { symbol, unit, meaning }]) => [
    symbol,
    cell(values[name], unit),
    unit,
    `${meaning} (${name})`,
  ]);
  return [
    `${table.item} ${key}`,
    ...table.sketch.split("\n"),
    ...columns(
      [{ head: "symbol" }, { head: "value", right: true }, { head: "unit" }, { head: "meaning (field in a preset)" }],
      rows,
    ),
    "",
    `${standing === "typical" ? "typical, measure your own" : standing}, ${from === "seen" ? "read off the source" : "from memory"}`,
    ...wrap(spell(source), WIDTH),
    ...(note === undefined ? [] : wrap(`note: ${note}`, WIDTH)),
  ];
}

/** Returns a test of rows: every filter is a field or symbol with a value, a comparison, or a range "8..12". */
function matching(table: Table, filters: StockArgs["filters"]): (row: Row) => boolean {
  const tests = Object.entries(filters).map(([name, wanted]) => {
    const entry = Object.entries(table.fields).find(([field, { symbol }]) => field === name || symbol === name);
    if (entry === undefined) throw trouble(`a ${table.item} has no ${name}; ${hint(name, Object.keys(table.fields))}`);
    return { field: entry[0], holds: comparison(wanted) };
  });
  return ({ values }) => tests.every(({ field, holds }) => holds(values[field]));
}

function comparison(wanted: string): (value: unknown) => boolean {
  const range = /^(-?[\d.]+)\.\.(-?[\d.]+)$/.exec(wanted);
  if (range !== null) return (value) => Number(value) >= Number(range[1]) && Number(value) <= Number(range[2]);
  const sign = /^(<=|>=|<|>|=)?\s*(.+)$/.exec(wanted);
  const [how = "=", text = wanted] = [sign?.[1], sign?.[2]];
  const limit = Number(text);
  if (Number.isNaN(limit)) {
    if (how !== "=") throw trouble(`${wanted} compares with something that is not a number`);
    return (value) => String(value).toLowerCase() === text.toLowerCase();
  }
  const tests: Readonly<Record<string, (value: number) => boolean>> = {
    "=": (value) => Math.abs(value - limit) < 1e-9,
    "<": (value) => value < limit,
    "<=": (value) => value <= limit,
    ">": (value) => value > limit,
    ">=": (value) => value >= limit,
  };
  return (value) => typeof value === "number" && (tests[how]?.(value) ?? false);
}
