import { describe, expect, it } from "vitest";
import { TABLES } from "../../src/catalogue/index.ts";
import { SOURCES, splitCitation } from "../../src/core/bibliography.ts";
import type { Disagreement } from "../../src/core/disagreement.ts";
import { findRow, type Row, type Table } from "../../src/core/table.ts";

/** Deviations from a nominal size are the only numbers that may be negative. */
const SIGNED = new Set(["fits.lower", "fits.upper"]);

/** A field may hold a 0 only when its meaning tells the reader what the 0 stands for. */
const saysWhatZeroMeans = (meaning: string) => /\b0\b/.test(meaning);

const fieldsOf = (table: Table) => Object.entries(table.fields);

/** Returns the complaints about one value; none when it is sound. */
function flaws(table: Table, row: Row, name: string): string[] {
  const value = row.values[name];
  const meaning = table.fields[name]?.meaning ?? "";
  const at = `${table.name} ${row.key} ${name}`;
  if (typeof value === "string") return value.trim() === "" ? [`${at} is blank`] : [];
  if (typeof value !== "number" || !Number.isFinite(value)) return [`${at} is ${String(value)}`];
  if (SIGNED.has(`${table.name}.${name}`)) return [];
  if (value < 0 || (value === 0 && !saysWhatZeroMeans(meaning))) return [`${at} is ${value}`];
  return [];
}

/** Returns what breaks the rule that a disagreement names; none when the value used is the one the rule gives. */
function unsettled(table: Table, row: Row, { field, others, by, settled }: Disagreement): string[] {
  const at = `${table.name} ${row.key} ${field}`;
  const column = table.fields[field];
  const value = row.values[field];
  if (column === undefined || value === undefined) return [`${at} is no field`];
  if (others.length === 0 || by.trim() === "") return [`${at} differs from nothing`];
  if (others.some((other) => typeof other === typeof value && other === value)) return [`${at} agrees`];
  const { kind } = SOURCES[splitCitation(column.source ?? row.source).key];
  const numbers = [value, ...others].filter((one): one is number => typeof one === "number");
  const holds = {
    standard: kind === "standard",
    formula: kind === "standard",
    maker: kind !== "practice" || row.standing === "typical",
    lower: value === Math.min(...numbers),
    higher: value === Math.max(...numbers),
    middle: value !== Math.min(...numbers) && value !== Math.max(...numbers),
    usual: true,
  };
  return holds[settled] ? [] : [`${at} is ${value} among ${numbers.join(", ")}, which is not: ${settled}`];
}

/** Whether the symbol stands in the sketch as a word of its own. */
function mentions(sketch: string, symbol: string): boolean {
  const plain = symbol.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`(?<![A-Za-z0-9_])${plain}(?![A-Za-z0-9_])`).test(sketch);
}

describe("the list of tables", () => {
  it("names each table once, in lower case with hyphens", () => {
    const names = TABLES.map((table) => table.name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => !/^[a-z]+(-[a-z]+)*$/.test(name))).toEqual([]);
  });

  it("notices a bad value, a missing one and a symbol that is only part of a word", () => {
    const table = TABLES.find(({ name }) => name === "bearings") as Table;
    const values = { ...table.rows[0]?.values, bore: -1, width: Number.NaN };
    const bad = { ...(table.rows[0] as Row), key: "bad", values };
    expect(flaws(table, bad, "bore")).toEqual(["bearings bad bore is -1"]);
    expect(flaws(table, bad, "width")).toEqual(["bearings bad width is NaN"]);
    expect(flaws(table, { ...bad, values: {} }, "outside")).toEqual(["bearings bad outside is undefined"]);
    const other = (settled: Disagreement["settled"], ...others: number[]) =>
      unsettled(table, table.rows[0] as Row, { field: "bore", others, by: "others", settled });
    expect(other("lower", 2)).toEqual(["bearings 603 bore is 3 among 3, 2, which is not: lower"]);
    expect(other("higher", 4)).toHaveLength(1);
    expect(other("middle", 4, 5)).toHaveLength(1);
    expect(other("middle", 2, 5)).toEqual([]);
    expect(other("usual", 3)).toEqual(["bearings 603 bore agrees"]);
    expect(other("usual")).toEqual(["bearings 603 bore differs from nothing"]);
    const stranger = { field: "colour", others: [1], by: "others", settled: "usual" } as const;
    expect(unsettled(table, table.rows[0] as Row, stranger)).toEqual(["bearings 603 colour is no field"]);
    expect(mentions("|<- d1 ->|", "d")).toBe(false);
    expect(mentions("|<- d ->|", "d")).toBe(true);
  });
});

describe.each(TABLES.map((table) => [table.name, table] as const))("table %s", (_name, table) => {
  it("has a title, a word for one row, and rows", () => {
    expect(table.title.trim()).not.toBe("");
    expect(table.item.trim()).not.toBe("");
    expect(table.rows.length).toBeGreaterThan(0);
  });

  it("has keys that stay apart when case is ignored, and that lead back to their row", () => {
    const keys = table.rows.map((row) => row.key.toLowerCase());
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
    expect(table.rows.filter((row) => findRow(table, ` ${row.key.toUpperCase()} `) !== row)).toEqual([]);
    expect(keys.filter((key) => key !== key.trim() || key === "")).toEqual([]);
  });

  it("has all its fields in every row and no others", () => {
    const expected = Object.keys(table.fields).sort();
    for (const row of table.rows) expect(Object.keys(row.values).sort(), row.key).toEqual(expected);
  });

  it("keeps one type per field: all numbers or all words", () => {
    for (const [name] of fieldsOf(table)) {
      expect(new Set(table.rows.map((row) => typeof row.values[name])).size, name).toBe(1);
    }
  });

  it("holds finite, positive numbers and words that are not blank", () => {
    expect(table.rows.flatMap((row) => fieldsOf(table).flatMap(([name]) => flaws(table, row, name)))).toEqual([]);
  });

  it("gives each field a symbol of its own and a meaning", () => {
    const symbols = fieldsOf(table).map(([, field]) => field.symbol);
    expect(symbols.filter((symbol, at) => symbols.indexOf(symbol) !== at || symbol === "")).toEqual([]);
    expect(fieldsOf(table).filter(([, field]) => field.meaning.trim() === "")).toEqual([]);
  });

  it("draws every symbol in plain letters, at most 78 columns wide", () => {
    const lines = table.sketch.split("\n");
    expect(lines.filter((line) => line.length > 78)).toEqual([]);
    expect(lines.filter((line) => !/^[ -~]*$/.test(line))).toEqual([]);
    expect(fieldsOf(table).filter(([, field]) => !mentions(table.sketch, field.symbol))).toEqual([]);
  });

  it("cites a source that exists and fits the row's standing", () => {
    for (const row of table.rows) {
      const { key } = splitCitation(row.source);
      const kind = SOURCES[key]?.kind;
      expect(kind, `${row.key} cites ${row.source}`).toBeDefined();
      if (row.standing === "standard") expect(kind, row.key).toBe("standard");
      if (kind === "practice") expect(row.standing, row.key).toBe("typical");
    }
  });

  it("settles every disagreement by the rule it names", () => {
    const flawed = table.rows.flatMap((row) => (row.differs ?? []).flatMap((one) => unsettled(table, row, one)));
    expect(flawed).toEqual([]);
  });

  it("takes no column from a source that does not exist", () => {
    const cited = fieldsOf(table).flatMap(([, { source }]) => (source === undefined ? [] : [source]));
    expect(cited.filter((source) => SOURCES[splitCitation(source).key] === undefined)).toEqual([]);
  });

  it("tells more about every typical row: a note, or that it is common practice", () => {
    const told = ({ note = "", differs = [] }: Row) => note !== "" || differs.length > 0;
    const silent = table.rows.filter((row) => row.standing === "typical" && !told(row));
    expect(silent.filter((row) => SOURCES[splitCitation(row.source).key].kind !== "practice")).toEqual([]);
  });
});
