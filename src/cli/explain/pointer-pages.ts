import { findRow } from "../../core/table.ts";
import { FAMILIES } from "../../parts/index.ts";
import { ALL_TABLES } from "../stock/tables.ts";
import type { Page } from "./page.ts";

/** Returns a page for every family, table or row of that name, which says what command tells about it. */
export function pointerPages(what: string): Page[] {
  const page = (title: string, command: string, kind: string): Page => ({
    name: what,
    title,
    lines: [`shown by  ${command}`],
    data: { kind, name: what, title, command },
  });
  const families = FAMILIES.filter(({ name }) => name === what).map(({ name, title }) =>
    page(`${name}: ${title}`, `tramwright parts ${name}`, "family"),
  );
  const tables = ALL_TABLES.filter(({ name }) => name === what).map(({ name, title }) =>
    page(`${name}: a table of hardware: ${title}`, `tramwright stock ${name}`, "table"),
  );
  const rows = ALL_TABLES.flatMap((table) => {
    const row = findRow(table, what);
    if (row === undefined) return [];
    const key = row.key.includes(" ") ? `'${row.key}'` : row.key;
    return [page(`${row.key}: a row of ${table.name}`, `tramwright stock ${table.name} ${key}`, "row")];
  });
  return [...families, ...tables, ...rows];
}
