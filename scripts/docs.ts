import { mkdirSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import * as z from "zod";
import { presetSchema, SUBJECTS } from "../src/presets/schema/preset-schema.ts";
import { EXAMPLE_PLANS } from "../src/stage/examples/index.ts";
import { calculationsPage } from "./docs/calculations.ts";
import { messagesPage } from "./docs/messages.ts";
import { presetsPage } from "./docs/presets.ts";
import { DOCUMENTS } from "./docs/printed/documents.ts";
import { sourcesPage } from "./docs/sources.ts";

/** The pages that are written from the tables, by file name. */
export const PAGES: Readonly<Record<string, () => string>> = {
  "calculations.md": calculationsPage,
  "messages.md": messagesPage,
  "presets.md": presetsPage,
  "sources.md": sourcesPage,
};

export const FOLDER = resolve(import.meta.dirname, "../docs");

/** The schemas that editors check presets with, by file name. */
export const SCHEMAS: Readonly<Record<string, () => string>> = Object.fromEntries(
  SUBJECTS.map((subject) => [`${subject}.json`, () => `${JSON.stringify(presetSchema(subject), undefined, 1)}\n`]),
);

export const SCHEMA_FOLDER = resolve(import.meta.dirname, "../presets/schemas");

/** The plans that examples of defects are changes of, by file name. */
export const EXAMPLES: Readonly<Record<string, string>> = EXAMPLE_PLANS;

export const EXAMPLE_FOLDER = resolve(import.meta.dirname, "../presets/examples");

/** The schemas of what `--json` prints, by file name. */
export const PRINTED: Readonly<Record<string, () => string>> = Object.fromEntries(
  Object.entries(DOCUMENTS).map(([name, { title, shape }]) => [
    `${name}.schema.json`,
    () => `${JSON.stringify({ title, ...z.toJSONSchema(shape, { target: "draft-7" }) }, undefined, 1)}\n`,
  ]),
);

export const PRINTED_FOLDER = resolve(FOLDER, "json");

if (process.argv[1] === import.meta.filename) {
  for (const [file, page] of Object.entries(PAGES)) writeFileSync(resolve(FOLDER, file), page());
  mkdirSync(EXAMPLE_FOLDER, { recursive: true });
  for (const [file, text] of Object.entries(EXAMPLES)) writeFileSync(resolve(EXAMPLE_FOLDER, file), text);
  mkdirSync(SCHEMA_FOLDER, { recursive: true });
  mkdirSync(PRINTED_FOLDER, { recursive: true });
  for (const [file, schema] of Object.entries(PRINTED)) writeFileSync(resolve(PRINTED_FOLDER, file), schema());
  for (const [file, schema] of Object.entries(SCHEMAS)) writeFileSync(resolve(SCHEMA_FOLDER, file), schema());
}
