import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { TOPICS } from "../scripts/docs/topics.ts";
import {
  EXAMPLE_FOLDER,
  EXAMPLES,
  FOLDER,
  PAGES,
  PRINTED,
  PRINTED_FOLDER,
  SCHEMA_FOLDER,
  SCHEMAS,
} from "../scripts/docs.ts";
import { TABLES } from "../src/catalogue/index.ts";
import { SOURCES } from "../src/core/bibliography.ts";
import { CALCULATION_DEFECTS } from "../src/core/calculation-defects.ts";
import { DEFECTS } from "../src/core/defects.ts";
import { CALCULATIONS } from "../src/mechanics/index.ts";
import { GUIDES } from "../src/parts/guides.ts";
import { FAMILIES } from "../src/parts/index.ts";
import { partFileSchema } from "../src/presets/part-preset.ts";
import { printerFileSchema } from "../src/presets/printer-preset.ts";
import { stageFileSchema } from "../src/presets/stage-preset.ts";
import { printerSchema } from "../src/printing/printer.ts";
import { PLAN_MEASURES } from "../src/stage/plan-measures.ts";
import { STAGE_DEFECTS } from "../src/stage/stage-defects.ts";

describe("pages that are written from the tables", () => {
  test.each(Object.entries(PAGES))("docs/%s is as `npm run docs` writes it", (file, page) => {
    expect(readFileSync(resolve(FOLDER, file), "utf8")).toBe(page());
  });

  test.each(Object.entries(SCHEMAS))("presets/schemas/%s is as `npm run docs` writes it", (file, schema) => {
    expect(readFileSync(resolve(SCHEMA_FOLDER, file), "utf8")).toBe(schema());
  });

  test.each(Object.entries(EXAMPLES))("presets/examples/%s is as `npm run docs` writes it", (file, text) => {
    expect(readFileSync(resolve(EXAMPLE_FOLDER, file), "utf8")).toBe(text);
  });

  test("every message has its entry, and every entry an example with what is told", () => {
    const text = PAGES["messages.md"]?.() ?? "";
    const checks = FAMILIES.flatMap(({ name, checks }) => checks.map((check) => `${name}.${check.name}`));
    const names = [DEFECTS, STAGE_DEFECTS, CALCULATION_DEFECTS].flatMap((table) => Object.keys(table));
    const entries = text.split(/^### /m).slice(1);
    expect(entries.map((entry) => entry.split("\n")[0]).sort()).toEqual([...names, ...checks].sort());
    const bare = entries.filter((entry) => !/^(.*:\d+:\d+: )?(error|warning|note): /m.test(entry));
    expect(bare.map((entry) => entry.split("\n")[0])).toEqual([]);
    expect(text).not.toMatch(/\bundefined\b|\bNaN\b|\[object/);
  });

  test("every key of every kind of preset is told with its meaning", () => {
    const text = PAGES["presets.md"]?.() ?? "";
    const keys = FAMILIES.flatMap(({ schema }) => Object.keys(schema.shape));
    const outer = [partFileSchema, stageFileSchema, printerFileSchema, printerSchema].flatMap(({ shape }) =>
      Object.keys(shape),
    );
    for (const key of [...keys, ...outer]) expect(text).toMatch(new RegExp(`^\\| \`${key}\` \\| .*[a-z]`, "m"));
    for (const guide of Object.values(GUIDES)) {
      for (const how of Object.values(guide.measure)) expect(text).toContain(String(how).replaceAll("|", "\\|"));
    }
    for (const how of Object.values(PLAN_MEASURES)) expect(text).toContain(how);
    expect(text).not.toMatch(/\bundefined\b|\bNaN\b|\[object/);
  });

  test.each(Object.entries(PRINTED))("docs/json/%s is as `npm run docs` writes it", (file, schema) => {
    expect(readFileSync(resolve(PRINTED_FOLDER, file), "utf8")).toBe(schema());
  });

  test("every calculation stands under one topic, and nothing else does", () => {
    const named = TOPICS.flatMap(([, names]) => names);
    expect([...named].sort()).toEqual(CALCULATIONS.map(({ name }) => name).sort());
  });

  test("each calculation is told with its formulas, inputs, range, source and examples", () => {
    const text = PAGES["calculations.md"]?.() ?? "";
    for (const { name, title, inputs, valid, examples } of CALCULATIONS) {
      const from = text.indexOf(`\n### ${name}\n`);
      const own = text.slice(from, text.indexOf("\n#", from + 1) + 1 || undefined);
      expect(own).toContain(title);
      for (const { symbol, meaning } of Object.values(inputs)) {
        expect(own).toContain(`| takes | \`${symbol}\` |`);
        expect(own).toContain(meaning);
      }
      expect(own).toContain(`- Range: ${valid}.`);
      expect(own.match(/^- Worked, after /gm)?.length, name).toBe(examples.length);
    }
    expect(text).not.toContain("NaN");
    expect(text).not.toContain("undefined");
  });

  test("the sources are all there, and every recorded disagreement", () => {
    const text = PAGES["sources.md"]?.() ?? "";
    for (const key of Object.keys(SOURCES)) expect(text).toContain(`- \`${key}\`: `);
    const recorded = TABLES.flatMap(({ rows }) => rows.flatMap(({ differs = [] }) => differs));
    expect(recorded.length).toBeGreaterThan(100);
    for (const { differs = [] } of CALCULATIONS) for (const words of differs) expect(text).toContain(words);
    expect(text.match(/^\| [a-z-]+ \| .* also .* is used.*\|$/gm)?.length).toBe(recorded.length);
    expect(text).not.toContain("undefined");
  });
});
