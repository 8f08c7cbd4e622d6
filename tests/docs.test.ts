import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { TOPICS } from "../scripts/docs/topics.ts";
import { FOLDER, PAGES, PRINTED, PRINTED_FOLDER, SCHEMA_FOLDER, SCHEMAS } from "../scripts/docs.ts";
import { TABLES } from "../src/catalogue/index.ts";
import { SOURCES } from "../src/core/bibliography.ts";
import { CALCULATIONS } from "../src/mechanics/index.ts";

describe("pages that are written from the tables", () => {
  test.each(Object.entries(PAGES))("docs/%s is as `npm run docs` writes it", (file, page) => {
    expect(readFileSync(resolve(FOLDER, file), "utf8")).toBe(page());
  });

  test.each(Object.entries(SCHEMAS))("presets/schemas/%s is as `npm run docs` writes it", (file, schema) => {
    expect(readFileSync(resolve(SCHEMA_FOLDER, file), "utf8")).toBe(schema());
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
