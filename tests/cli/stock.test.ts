import { describe, expect, test } from "vitest";
import { stock } from "../../src/cli/commands/stock.ts";
import { ALL_TABLES } from "../../src/cli/stock/tables.ts";
import { SOURCES, spell, splitCitation } from "../../src/core/bibliography.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { readYaml } from "../../src/presets/read.ts";
import { collect, document, expectReadable, troubleOf } from "./collect.ts";

type Args = Partial<Parameters<typeof stock>[0]>;

const show = (args: Args = {}) => collect((io) => stock({ filters: {}, json: false, ...args }, io));
const refusal = (args: Args) => troubleOf((io) => stock({ filters: {}, json: false, ...args }, io));
const keys = (table: string, filters: Record<string, string>) =>
  document<{ key: string }[]>((io) => stock({ table, filters, json: true }, io)).map(({ key }) => key);
const flat = (lines: readonly string[]) => lines.join(" ").replace(/\s+/g, " ");

describe("the list of tables", () => {
  test("holds name, rows and title of every table", () => {
    const said = show();
    expectReadable(said, "stock");
    for (const { name, rows, title } of ALL_TABLES) {
      expect(said.some((line) => line.startsWith(`${name} `) && line.endsWith(`${rows.length}  ${title}`))).toBe(true);
    }
  });

  test("is one JSON document with the fields of each table", () => {
    const data = document<{ name: string; rows: number; fields: object }[]>((io) =>
      stock({ filters: {}, json: true }, io),
    );
    expect(data.map(({ name, rows }) => [name, rows])).toEqual(ALL_TABLES.map(({ name, rows }) => [name, rows.length]));
    expect(data[0]?.fields).toHaveProperty("bore.unit", "mm");
  });
});

describe.each(ALL_TABLES)("$name", (table) => {
  const said = show({ table: table.name });

  test("fits the screen, with units, symbols and sources", () => {
    expectReadable(said, table.name);
    expect(said[0]).toBe(table.title);
    for (const line of table.sketch.trimEnd().split("\n")) expect(said).toContain(line.trimEnd());
    for (const [name, { symbol, unit, meaning }] of Object.entries(table.fields)) {
      expect(
        said.some((line) => line.includes(`${symbol} ${unit}`.trimEnd())),
        name,
      ).toBe(true);
      expect(flat(said)).toContain(`${symbol} ${name} ${meaning}`.replace(/\s+/g, " "));
    }
    for (const { source } of table.rows) expect(flat(said)).toContain(SOURCES[splitCitation(source).key].title);
  });

  test("every block has every row once, in order", () => {
    const heads = said.flatMap((line, index) => (line.startsWith(`${table.item} `) ? [index] : []));
    const blocks = heads.filter((index) => said[index + 1]?.startsWith("---"));
    expect(blocks.length).toBeGreaterThan(0);
    for (const at of blocks) {
      const lines = said.slice(at + 2, at + 2 + table.rows.length);
      expect(lines.every((line, index) => line.startsWith(`${table.rows[index]?.key} `))).toBe(true);
      expect(said[at + 2 + table.rows.length]).toBe("");
    }
  });

  test("every row has a page with each value as the table holds it, and where it comes from", () => {
    for (const row of table.rows) {
      const page = show({ table: table.name, row: row.key });
      expectReadable(page, row.key);
      for (const [name, { symbol }] of Object.entries(table.fields)) {
        const line = page.find((one) => new RegExp(`^ {2}${symbol} +\\S.* ${name} `).test(one)) ?? "";
        const printed = line.slice(2 + symbol.length).trim();
        const value = row.values[name];
        if (typeof value === "number") expect(Number.parseFloat(printed), `${row.key}.${name}`).toBeCloseTo(value, 6);
        else expect(printed.startsWith(String(value)), `${row.key}.${name}`).toBe(true);
      }
      expect(flat(page)).toContain(SOURCES[splitCitation(row.source).key].title);
      expect(flat(page)).toContain(`standing ${row.standing}`);
      expect(flat(page)).toContain(
        row.from === "seen" ? "values read off the source" : "values written down from memory",
      );
      if (row.note !== undefined) expect(flat(page)).toContain(`note ${row.note}`.replace(/\s+/g, " "));
      for (const { field, others, by } of row.differs ?? []) {
        const { symbol = "", unit = "" } = table.fields[field] ?? {};
        const said = `differs ${symbol} also ${others.join(", ")} ${unit}`.trimEnd();
        expect(flat(page)).toContain(`${said} (${by}); `);
      }
      for (const { symbol, source } of Object.values(table.fields)) {
        if (source !== undefined)
          expect(flat(page)).toMatch(new RegExp(`\\b${symbol}(, \\w+)*: ${spell(source).slice(0, 9)}`));
      }
      const data = document<object>((io) => stock({ table: table.name, row: row.key, filters: {}, json: true }, io));
      expect(data).toEqual({ table: table.name, ...JSON.parse(JSON.stringify(row)) });
    }
  });

  test("every number filters its own row in, by field and by symbol", () => {
    for (const row of table.rows.slice(0, 5)) {
      for (const [name, { symbol }] of Object.entries(table.fields)) {
        const filter = String(row.values[name]);
        expect(keys(table.name, { [name]: filter }), `${row.key} ${name}=${filter}`).toContain(row.key);
        expect(keys(table.name, { [symbol]: filter }), `${row.key} ${symbol}=${filter}`).toContain(row.key);
      }
    }
  });
});

describe("filters", () => {
  test("a value, comparisons and a range, alone and together", () => {
    expect(keys("bearings", { bore: "8" })).toContain("608");
    expect(keys("bearings", { bore: "8" })).not.toContain("6000");
    expect(keys("bearings", { d: "8", B: "<=5" })).toEqual(["688"]);
    expect(keys("bearings", { d: "8", B: "<7" })).toEqual(["688", "698"]);
    expect(keys("bearings", { d: "8", B: ">7" })).toEqual(["628"]);
    expect(keys("bearings", { d: "8", B: ">=7" })).toEqual(["608", "628"]);
    expect(keys("bearings", { bore: "8..10", outside: ">25" })).toContain("6000");
    expect(keys("bearings", { bore: "10..8" })).toEqual(keys("bearings", { bore: "8..10" }));
    expect(keys("bearings", { bore: " 8 ", width: " <= 5 " })).toEqual(["688"]);
  });

  test("numbers may have a unit", () => {
    expect(keys("bearings", { bore: "1/4 in" })).toEqual(["R4"]);
    expect(keys("bearings", { bore: "0.8 cm" })).toEqual(keys("bearings", { bore: "8" }));
    expect(keys("fits", { lower: "-0.02..-0.01" }).length).toBeGreaterThan(0);
  });

  test("words are compared whole, capitals aside", () => {
    expect(keys("bars", { mountBolt: "m6" })).toEqual(["30x30 slot 8"]);
    expect(keys("bars", { mountBolt: "M" })).toEqual([]);
  });

  test("the capital decides between symbols, not between names", () => {
    expect(keys("bearings", { D: "22" })).toContain("608");
    expect(keys("bearings", { d: "22" })).toEqual([]);
    expect(keys("bearings", { INNERLAND: "12.1" })).toContain("608");
  });

  test("the heading tells how many rows passed; when none did, what there is", () => {
    expect(show({ table: "bearings", filters: { bore: "8" } })[0]).toMatch(/: 4 of \d+, bore 8$/);
    expect(show({ table: "bearings", filters: { bore: "99" } })).toEqual([
      "no bearing has bore 99; in this table bore runs from 3 to 25 mm",
    ]);
    expect(flat(show({ table: "bars", filters: { M_b: "M99" } }))).toMatch(/M_b is one of (M\d, )+M\d/);
    expect(keys("bearings", { bore: "99" })).toEqual([]);
  });

  test.each([
    [{ bore: "x" }, "bore is a number in mm, not x; write 8, '<=8', '>10' or 8..12"],
    [{ bore: "" }, "bore is a number in mm, not nothing; write 8, '<=8', '>10' or 8..12"],
    [{ bore: "8..x" }, "bore is a number in mm, not x; write 8, '<=8', '>10' or 8..12"],
    [{ bore: "8 N" }, "bore is a number in mm, not 8 N; write 8, '<=8', '>10' or 8..12"],
    [{ bor: "8" }, "a bearing has no bor; the nearest is bore"],
    [{ __proto__x: "8" }, /^a bearing has no __proto__x; there are bore/],
  ])("%j is refused", (filters, says) => {
    if (typeof says === "string") expect(refusal({ table: "bearings", filters })).toBe(says);
    else expect(refusal({ table: "bearings", filters })).toMatch(says);
  });

  test("words cannot be compared by size", () => {
    expect(refusal({ table: "bars", filters: { mountBolt: ">M5" } })).toBe(
      "mountBolt holds words, and >M5 compares numbers",
    );
  });

  test("filters without a table, or with a row, are refused", () => {
    expect(refusal({ filters: { bore: "8" } })).toMatch(/name the table first, one of bearings/);
    expect(refusal({ table: "bearings", row: "608", filters: { bore: "8" } })).toMatch(/needs no --bore/);
  });
});

describe("rows", () => {
  test("a row that parts take says how a preset names it, and the line it gives can be read", () => {
    const said = show({ table: "bearings", row: "608" });
    expect(flat(said)).toContain("taken by screw-foot.bearing");
    const snippet = said.find((line) => line.startsWith("measured "))?.replace(/^measured +/, "") ?? "";
    const { data } = readYaml("snippet", snippet.replace("<yours>", "7.99"));
    const foot = FAMILIES.find(({ name }) => name === "screw-foot");
    const parsed = foot?.schema.parse(data) as { bearing: { measured: string[]; values: { bore: number } } };
    expect(parsed.bearing.measured).toEqual(["bore"]);
    expect(parsed.bearing.values.bore).toBe(7.99);
  });

  test("a table that no part takes gives no such advice", () => {
    expect(show({ table: "fits", row: "H7 3 to 6" }).join("\n")).not.toContain("taken by");
  });

  test("a few notes stand under the table, equal ones once; many are left to the rows", () => {
    const said = flat(show({ table: "bearings", filters: { bore: "8" } }));
    expect(said).toContain("note on 628, 688, 698: lands are estimates, measure them");
    expect(flat(show({ table: "bearings" }))).toMatch(/\d+ rows have a note: tramwright stock bearings <bearing>/);
  });

  test("small limits keep their digits", () => {
    expect(flat(show({ table: "fits" }))).toContain("g6 3 to 6 3 6 -0.012 -0.004");
  });

  test("unknown tables and rows get the nearest; capitals do not matter", () => {
    expect(refusal({ table: "bearing" })).toBe("there is no table bearing; the nearest is bearings");
    expect(refusal({ table: "608" })).toBe("there is no table 608; 608 is a row of bearings");
    expect(refusal({ table: "bars", row: "20x20 slot6" })).toBe(
      "bars has no row 20x20 slot6; the nearest is 20x20 slot 6",
    );
    expect(show({ table: "Bars", row: "v 20X20" })).toEqual(show({ table: "bars", row: "V 20x20" }));
  });
});
