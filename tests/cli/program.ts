import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

/** The bundled program, built where nobody has yet. */
export const PROGRAM = resolve("dist/tramwright.cjs");
if (!existsSync(PROGRAM)) spawnSync("node", ["scripts/build.mjs"], { stdio: "inherit" });

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the program in a folder of its own, without colour, and returns what it said and ended with. */
export function run(
  words: readonly string[],
  cwd = fresh(),
  environment: Record<string, string> = {},
  input = "",
): Ran {
  const { status, stdout, stderr } = spawnSync("node", [PROGRAM, ...words], {
    cwd,
    encoding: "utf8",
    input,
    env: { ...process.env, NO_COLOR: "1", ...environment },
  });
  return { code: status, out: stdout, err: stderr };
}

export const fresh = () => mkdtempSync(join(tmpdir(), "tramwright-cli-"));

/** Returns a new folder with these files. */
export function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = fresh();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}
