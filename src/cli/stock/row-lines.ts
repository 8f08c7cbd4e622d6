import { spell } from "../../core/bibliography.ts";
import { disagreements } from "../../core/disagreement.ts";
import type { Row, Table } from "../../core/table.ts";
import { FAMILIES } from "../../parts/index.ts";
import { grid } from "../explain/grid.ts";
import { hanging } from "../explain/hanging.ts";
import { parameterFields } from "../explain/parameter-field.ts";
import { presetValue } from "../explain/preset-value.ts";
import { sketchLines } from "./table-lines.ts";

const STANDING = {
  standard: "standard: holds for every part sold under it",
  published: "published: from one maker's or author's page",
  typical: "typical: what is usually sold; measure your own before it carries a load",
} as const;

/** Returns one row: every field with what it means, how far it can be trusted, and how a preset takes it. */
export function rowLines(table: Table, row: Row): string[] {
  const fields = Object.entries(table.fields).map(([name, { symbol, unit, meaning }]) => {
    const value = row.values[name];
    return [symbol, typeof value === "number" ? exact(value) : (value ?? "-"), unit, name, meaning];
  });
  return [
    ...sketchLines(table),
    ...grid(["symbol", ">value", "unit", "field", "meaning"], fields),
    "",
    ...hanging("standing  ", STANDING[row.standing]),
    ...hanging("source    ", spell(row.source)),
    ...columnSources(table),
    `values    ${row.from === "seen" ? "read off the source" : "written down from memory"}`,
    ...(row.note === undefined ? [] : hanging("note      ", row.note)),
    ...disagreements(table, row).flatMap((one) => hanging("differs   ", one)),
    ...presetHints(table, row),
  ];
}

/** Columns that come from elsewhere than the row, each with its source. */
function columnSources(table: Table): string[] {
  const columns = Object.values(table.fields).filter(({ source }) => source !== undefined);
  const sources = [...new Set(columns.map(({ source }) => source))].filter((one) => one !== undefined);
  return sources.flatMap((one) => {
    const symbols = columns.filter(({ source }) => source === one).map(({ symbol }) => symbol);
    return hanging("          ", `${symbols.join(", ")}: ${spell(one)}`);
  });
}

/** A row's page repeats the number as the table holds it, binary noise aside. */
const exact = (value: number) => String(Number(value.toPrecision(7)));

function presetHints(table: Table, { key }: Row): string[] {
  const takers = FAMILIES.flatMap((family) =>
    parameterFields(family.schema, {})
      .filter((field) => field.table === table.name)
      .map((field) => `${family.name}.${field.key}`),
  );
  const [first] = takers;
  if (first === undefined) return [];
  const parameter = first.split(".")[1];
  const fields = Object.entries(table.fields);
  const [field] = fields.find(([, { unit }]) => unit === "mm") ?? fields[0] ?? [];
  return [
    ...hanging("taken by  ", takers.join(", ")),
    ...hanging("preset    ", `${parameter}: ${presetValue(key)}`),
    ...hanging("measured  ", `${parameter}: { row: ${presetValue(key)}, ${field}: <yours>, measured: true }`),
  ];
}
