import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { calculationsPage } from "./docs/calculations.ts";
import { sourcesPage } from "./docs/sources.ts";

/** The pages that are written from the tables, by file name. */
export const PAGES: Readonly<Record<string, () => string>> = {
  "calculations.md": calculationsPage,
  "sources.md": sourcesPage,
};

export const FOLDER = resolve(import.meta.dirname, "../docs");

if (process.argv[1] === import.meta.filename) {
  for (const [file, page] of Object.entries(PAGES)) writeFileSync(resolve(FOLDER, file), page());
}
