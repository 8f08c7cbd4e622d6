import { createRequire, Module } from "node:module";
import { Script } from "node:vm";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";

/** A bundle beside the program that was loaded. */
export interface Compiled<Exports> {
  readonly exports: Exports;
  /** Writes what V8 has compiled of it by now into the file from which the next run takes it. */
  readonly keepCompiled: () => void;
}

/**
 * Returns what the bundle `file` beside the program exports. `known` is what V8 compiled of it in a trial run of the
 * build, which any other version of Node ignores.
 */
export function loadCompiled<Exports>(file: string, known: string): Compiled<Exports> {
  const path = shipped(file);
  const compiled = exists(shipped(known)) ? { cachedData: readShipped(known) } : {};
  const source = Module.wrap(readShipped(file).toString("latin1"));
  // The name is kept with what was compiled, and the trial run has the program in another folder: the bare name holds.
  const script = new Script(source, { filename: file, ...compiled });
  const module = { exports: {} as Exports };
  script.runInThisContext()(module.exports, createRequire(path), module, path, __dirname);
  return { exports: module.exports, keepCompiled: () => writeShipped(known, script.createCachedData()) };
}
