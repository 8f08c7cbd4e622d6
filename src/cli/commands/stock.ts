import { findRow, type Table } from "../../core/table.ts";
import { hanging } from "../explain/hanging.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import { columns } from "../screen.ts";
import { type Filters, filteredRows, filterWords, nothingLines } from "../stock/row-filter.ts";
import { rowLines } from "../stock/row-lines.ts";
import { tableLines } from "../stock/table-lines.ts";
import { ALL_TABLES } from "../stock/tables.ts";

interface StockArgs {
  readonly table?: string;
  readonly row?: string;
  /** Field or symbol, and a value or comparison. */
  readonly filters: Filters;
  readonly json: boolean;
}

/** Prints the list of tables, one table or what the filters leave of it, or one row. Returns the exit code. */
export function stock({ table: name, row: key, filters, json }: StockArgs, io: Io): number {
  if (name === undefined) listTables(filters, json, io);
  else if (key === undefined) showTable(tableOf(name), filters, json, io);
  else showRow(tableOf(name), key, filters, json, io);
  return EXIT.done;
}

const asJson = (data: unknown) => JSON.stringify(data, undefined, 2);

function tableOf(name: string): Table {
  const asked = name.trim().toLowerCase();
  const table = ALL_TABLES.find((one) => one.name === asked);
  if (table !== undefined) return table;
  const holder = ALL_TABLES.find((one) => findRow(one, name) !== undefined);
  const names = ALL_TABLES.map((one) => one.name);
  const hint = holder === undefined ? nearestWords(name, names) : `${name} is a row of ${holder.name}`;
  throw trouble(`there is no table ${name}; ${hint}`);
}

function listTables(filters: Filters, json: boolean, io: Io): void {
  const [filter] = Object.keys(filters);
  if (filter !== undefined) {
    const holders = ALL_TABLES.filter(({ fields }) => filter in fields).map(({ name }) => name);
    const among = holders.length === 0 ? "" : `, one of ${holders.slice(0, 6).join(", ")}`;
    throw trouble(`--${filter} chooses rows of a table; name the table first${among}`);
  }
  if (json) {
    io.out(
      asJson(
        ALL_TABLES.map(({ name, title, item, fields, rows }) => ({ name, title, item, fields, rows: rows.length })),
      ),
    );
    return;
  }
  const heads = [{ head: "table" }, { head: "rows", right: true }, { head: "what" }];
  for (const line of columns(
    heads,
    ALL_TABLES.map(({ name, rows, title }) => [name, String(rows.length), title]),
  ))
    io.out(line);
  io.out("");
  io.out(io.paint("faint", "tramwright stock bearings shows a table, stock bearings 608 a row,"));
  io.out(
    io.paint("faint", "stock bearings --bore 8 --width '<=7' the rows that fit; 8..12 and '1/4 in' work as well."),
  );
}

function showTable(table: Table, filters: Filters, json: boolean, io: Io): void {
  const rows = filteredRows(table, filters);
  if (json) {
    io.out(asJson(rows));
    return;
  }
  const some = Object.keys(filters).length > 0;
  if (rows.length === 0) {
    for (const line of nothingLines(table, filters).flatMap((words) => hanging("", words))) io.out(line);
    return;
  }
  const title = some ? `${table.title}: ${rows.length} of ${table.rows.length}, ${filterWords(filters)}` : table.title;
  for (const line of hanging("", title)) io.out(io.paint("bold", line));
  for (const line of tableLines(table, rows)) io.out(line);
}

function showRow(table: Table, key: string, filters: Filters, json: boolean, io: Io): void {
  const [filter] = Object.keys(filters);
  if (filter !== undefined) throw trouble(`a single row needs no --${filter}; leave out the row or the filter`);
  const row = findRow(table, key);
  if (row === undefined) {
    const keys = table.rows.map((one) => one.key);
    throw trouble(`${table.name} has no row ${key}; ${nearestWords(key, keys)}`);
  }
  if (json) io.out(asJson({ table: table.name, ...row }));
  else {
    io.out(io.paint("bold", `${table.item} ${row.key}`));
    for (const line of rowLines(table, row)) io.out(line);
  }
}
