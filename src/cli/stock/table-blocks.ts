import type { SourceKey } from "../../core/bibliography.ts";
import { splitCitation } from "../../core/bibliography.ts";
import type { Row, Table } from "../../core/table.ts";
import { columns } from "../screen.ts";
import { cell } from "./cell.ts";

interface Block {
  readonly head: string;
  readonly right: boolean;
  readonly cells: readonly string[];
}

/** The widest block: the screen less the margin. */
const WIDTH = 96;

/** Returns the rows as tables that fit the screen side by side in thought: each begins with the key of the row. */
export function tableBlocks(table: Table, rows: readonly Row[], sources: readonly SourceKey[]): string[][] {
  const key = { head: table.item, right: false, cells: rows.map((row) => row.key) };
  const fields = Object.entries(table.fields).map(([name, { symbol, unit }]) => ({
    head: `${symbol} ${unit}`.trimEnd(),
    right: rows.some(({ values }) => typeof values[name] === "number"),
    cells: rows.map(({ values }) => cell(values[name], unit)),
  }));
  const standing = {
    head: "standing",
    right: false,
    cells: rows.map((row) => (row.standing === "typical" ? "typical, measure" : row.standing)),
  };
  const source = {
    head: "source",
    right: false,
    cells: rows.map((row) => `[${sources.indexOf(splitCitation(row.source).key) + 1}] ${row.from}`),
  };
  const groups: Block[][] = [];
  for (const column of [...fields, standing, source]) {
    const group = groups.at(-1);
    if (group === undefined || width([...group, column]) > WIDTH) groups.push([key, column]);
    else group.push(column);
  }
  return groups.map((group) =>
    columns(
      group,
      rows.map((_, index) => group.map(({ cells }) => cells[index] ?? "")),
    ),
  );
}

function width(group: readonly Block[]): number {
  const sizes = group.map(({ head, cells }) => Math.max(head.length, ...cells.map((text) => text.length)));
  return sizes.reduce((sum, size) => sum + size + 2, 0);
}
