import { createRequire, Module } from "node:module";
import { join } from "node:path";
import { Script } from "node:vm";
import { exists, readShipped, writeShipped } from "./files.ts";

/** What the bundled program offers to its start file. */
export type Program = typeof import("./run.ts");

const FILE = "program.cjs";
/** What V8 compiled in the trial run of the build; ignored by any other version of Node. */
const COMPILED = "program.compiled";

/** Returns the program, compiled beforehand where the trial run fits this Node, and what keeps what was compiled. */
export function loadProgram(): { readonly program: Program; readonly keepCompiled: () => void } {
  const path = join(__dirname, FILE);
  const compiled = exists(join(__dirname, COMPILED)) ? { cachedData: readShipped(COMPILED) } : {};
  const source = Module.wrap(readShipped(FILE).toString("latin1"));
  // The name is kept with what was compiled, and the trial run has the program in another folder: the bare name holds.
  const script = new Script(source, { filename: FILE, ...compiled });
  const module = { exports: {} as Program };
  script.runInThisContext()(module.exports, createRequire(path), module, path, __dirname);
  return { program: module.exports, keepCompiled: () => writeShipped(COMPILED, script.createCachedData()) };
}
