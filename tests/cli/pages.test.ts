import { describe, expect, test } from "vitest";
import { TABLES } from "../../src/catalogue/index.ts";
import { explain } from "../../src/cli/commands/explain.ts";
import { parts } from "../../src/cli/commands/parts.ts";
import { stock } from "../../src/cli/commands/stock.ts";
import { SOURCES } from "../../src/core/bibliography.ts";
import { CALCULATIONS } from "../../src/mechanics/index.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";

/** Runs a command and returns its lines. */
function lines(
  command: (io: {
    out: (line: string) => void;
    err: () => void;
    paint: (_: string, words: string) => string;
  }) => number,
): string[] {
  const said: string[] = [];
  const code = command({
    out: (line) => said.push(...line.split("\n")),
    err: () => undefined,
    paint: (_, words) => words,
  });
  expect(code).toBe(0);
  return said;
}

function readable(said: readonly string[]): void {
  expect(said.join("\n")).not.toMatch(/\bNaN\b|\bundefined\b|\[object|Infinity/);
  expect(said.filter((line) => line.length > 100)).toEqual([]);
}

const page = (what: string) => lines((io) => explain({ what, json: false }, io, UNCALIBRATED));

describe("parts", () => {
  test("lists every family", () => {
    const said = lines((io) => parts({ json: false }, io)).join("\n");
    for (const { name } of FAMILIES) expect(said).toContain(name);
  });

  test.each(FAMILIES)("$name: every parameter, number and check is told", (family) => {
    const said = lines((io) => parts({ family: family.name, json: false }, io));
    readable(said);
    for (const key of Object.keys(family.schema.shape))
      expect(
        said.some((line) => line.startsWith(`  ${key} `)),
        key,
      ).toBe(true);
    for (const { name } of family.checks) expect(said).toContain(`  ${name}`);
    expect(JSON.parse(lines((io) => parts({ family: family.name, json: true }, io)).join("\n"))).toHaveProperty(
      "parameters",
    );
  });

  test("a misspelled family gets the nearest", () => {
    expect(() =>
      parts({ family: "wheel-spacr", json: false }, { out: () => 0, err: () => 0, paint: (_, w) => w }),
    ).toThrow(/wheel-spacer/);
  });
});

describe("explain", () => {
  test.each(FAMILIES)("$name: every number and every check has a page", (family) => {
    const design = family.design(family.schema.parse({}), UNCALIBRATED);
    for (const { key } of design.dimensions) readable(page(`${family.name}.${key}`));
    for (const { name } of family.checks) {
      const said = page(name);
      readable(said);
      expect(
        said.some((line) => line.startsWith("  says")),
        name,
      ).toBe(true);
    }
  });

  test("every calculation and every source has a page", () => {
    for (const { name } of CALCULATIONS) readable(page(name));
    for (const key of Object.keys(SOURCES)) readable(page(key));
  });

  test("a number shows formula, substitution, result and source", () => {
    const said = page("wheel-spacer.area").join("\n");
    expect(said).toContain("A = pi / 4 * (OD^2 - ID^2)");
    expect(said).toContain("pi / 4 * (10^2 - 5.3^2)");
    expect(said).toContain("= 56.48 mm2");
    expect(said).toContain("geometry");
  });

  test("an unknown name gets the nearest one", () => {
    expect(() => page("spring-rat")).toThrow(/spring-rate/);
    expect(() => page("wheel-spacer.aera")).toThrow(/area/);
  });

  test("JSON holds the same", () => {
    const data = JSON.parse(
      lines((io) => explain({ what: "wheel-spacer.area", json: true }, io, UNCALIBRATED)).join("\n"),
    ) as { value: number }[];
    expect(data[0]?.value).toBeCloseTo(56.48, 2);
  });
});

describe("stock", () => {
  const show = (args: Partial<Parameters<typeof stock>[0]>) =>
    lines((io) => stock({ filters: {}, json: false, ...args }, io));

  test.each(TABLES.map(({ name, rows }) => ({ name, rows })))(
    "$name fits the screen, whole and row by row",
    ({ name, rows }) => {
      readable(show({ table: name }));
      for (const { key } of rows) readable(show({ table: name, row: key }));
    },
  );

  test("filters by field, symbol, comparison and range", () => {
    const keys = (filters: Record<string, string>) =>
      (JSON.parse(show({ table: "bearings", filters, json: true }).join("\n")) as { key: string }[]).map(
        ({ key }) => key,
      );
    expect(keys({ bore: "8" })).toContain("608");
    expect(keys({ bore: "8" })).not.toContain("6000");
    expect(keys({ d: "8", B: "<=5" })).toEqual(["688"]);
    expect(keys({ bore: "8..10", outside: ">25" })).toContain("6000");
  });

  test("unknown tables, rows and fields get the nearest", () => {
    expect(() => show({ table: "bearing" })).toThrow(/bearings/);
    expect(() => show({ table: "bearings", row: "68" })).toThrow(/nearest|there are/);
    expect(() => show({ table: "bearings", filters: { bor: "8" } })).toThrow(/bore/);
  });
});
