import type { Row, Table } from "../../core/table.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { shown } from "../explain/shown.ts";
import { trouble } from "../io.ts";
import { condition } from "./condition.ts";

/** What the user typed behind the table: field or symbol, and value or comparison. */
export type Filters = Readonly<Record<string, string>>;

/** Returns the rows that pass every filter. An unknown field is a trouble that names the nearest. */
export function filteredRows(table: Table, filters: Filters): readonly Row[] {
  const tests = Object.entries(filters).map(([name, wanted]) => {
    const key = fieldOf(table, name);
    const field = table.fields[key];
    if (field === undefined) throw new RangeError(`${table.name} has no field ${key}`);
    const values = table.rows.map((row) => row.values[key]);
    return { key, holds: condition(name, field, wanted, values) };
  });
  return table.rows.filter(({ values }) => tests.every(({ key, holds }) => holds(values[key])));
}

/** Returns the filters in words: `bore 8, width <=7`. */
export function filterWords(filters: Filters): string {
  return Object.entries(filters)
    .map(([name, wanted]) => `${name} ${wanted.trim()}`)
    .join(", ");
}

/** Returns why nothing passed: what each field asked for can be. */
export function nothingLines(table: Table, filters: Filters): string[] {
  const spans = Object.keys(filters).map((name) => {
    const key = fieldOf(table, name);
    const unit = table.fields[key]?.unit ?? "";
    const values = table.rows.flatMap((row) => row.values[key] ?? []);
    const numbers = values.filter((value) => typeof value === "number");
    const words = [...new Set(values.filter((value) => typeof value === "string"))].join(", ");
    if (numbers.length === 0) return `${name} is one of ${words}`;
    const [least, most] = [Math.min(...numbers), Math.max(...numbers)];
    return `${name} runs from ${shown(least, unit)} to ${`${shown(most, unit)} ${unit}`.trimEnd()}`;
  });
  return [`no ${table.item} has ${filterWords(filters)}; in this table ${spans.join(", ")}`];
}

/** Returns the field that a name or a symbol means. Symbols count capitals; names do not. */
function fieldOf(table: Table, name: string): string {
  const fields = Object.entries(table.fields);
  const found =
    fields.find(([key]) => key === name) ??
    fields.find(([, { symbol }]) => symbol === name) ??
    fields.find(([key]) => key.toLowerCase() === name.toLowerCase());
  if (found !== undefined) return found[0];
  const names = fields.map(([key]) => key);
  throw trouble(`a ${table.item} has no ${name}; ${nearestWords(name, names)}`);
}
