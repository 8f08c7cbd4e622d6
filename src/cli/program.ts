import { createRequire, Module } from "node:module";
import { Script } from "node:vm";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";

/** What the bundled program offers to its start file. */
export type Program = typeof import("./run.ts");

const FILE = "program.cjs";
/**
 * What V8 compiled in a trial run of the build, ignored by any other version of Node: one run made parts, the other a
 * machine. What is compiled takes time to read, so neither has what only the other needs.
 */
const COMPILED = { part: "part.compiled", machine: "machine.compiled" } as const;

/** Returns the program, compiled beforehand where the trial run fits this Node, and what keeps what was compiled. */
export function loadProgram(work: keyof typeof COMPILED): {
  readonly program: Program;
  readonly keepCompiled: () => void;
} {
  const path = shipped(FILE);
  const known = COMPILED[work];
  const compiled = exists(shipped(known)) ? { cachedData: readShipped(known) } : {};
  const source = Module.wrap(readShipped(FILE).toString("latin1"));
  // The name is kept with what was compiled, and the trial run has the program in another folder: the bare name holds.
  const script = new Script(source, { filename: FILE, ...compiled });
  const module = { exports: {} as Program };
  script.runInThisContext()(module.exports, createRequire(path), module, path, __dirname);
  return { program: module.exports, keepCompiled: () => writeShipped(known, script.createCachedData()) };
}
