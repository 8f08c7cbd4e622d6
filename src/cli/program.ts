import { type Compiled, loadCompiled } from "./compiled.ts";

/** What the bundled program offers to its start file. */
export type Program = typeof import("./run.ts");

/**
 * What V8 compiled of the program: one trial run made parts, the other a machine. What is compiled takes time to read,
 * so neither has what only the other needs.
 */
const COMPILED = { part: "part.compiled", machine: "machine.compiled" } as const;

/** Returns the program. */
export const loadProgram = (work: keyof typeof COMPILED): Compiled<Program> =>
  loadCompiled("program.cjs", COMPILED[work]);

/** Returns the small program that answers where nothing has changed. */
export const loadMadeAlready = (): Compiled<typeof import("./made-already.ts")> =>
  loadCompiled("made-already.cjs", "made-already.compiled");
