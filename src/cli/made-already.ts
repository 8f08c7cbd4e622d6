import { resolve } from "node:path";
import { last, readArguments, refuseContradictions, refuseStrangers } from "./arguments.ts";
import { tryOrdinary } from "./file-text.ts";
import { stageIn } from "./glance.ts";
import { EXIT } from "./io.ts";
import { repeat } from "./repeat.ts";
import { type Unchanged, unchangedSet } from "./unchanged.ts";
import { type Outlets, outletsOf } from "./world.ts";

/**
 * Answers a `make` of machines that are all there as it would make them: says again what was said when they were made,
 * and returns the exit code. Undefined where anything has to be worked out or refused: nothing was said then. This is
 * a program of its own, without all that works machines out.
 */
export function madeAlready(argv: readonly string[], version: string, outlets: Outlets): number | undefined {
  const found = asMade(argv, version, outlets);
  if (found === undefined) return undefined;
  for (const one of found.sets) repeat(one, found, found.io);
  // With an error a set is never kept as made.
  return EXIT.done;
}

/** Trouble is for the whole program to tell. */
function asMade(argv: readonly string[], version: string, outlets: Outlets) {
  try {
    const args = readArguments(argv);
    const { command, operands, flags, values } = args;
    if (command !== "make" || ["json", "force", "dry-run", "help", "version"].some((flag) => flags.has(flag)))
      return undefined;
    refuseStrangers(args);
    refuseContradictions(args);
    const asked = { set: values.set ?? [], printer: last(args, "printer"), version };
    const { io } = outletsOf(args, outlets);
    const sets = operands.map((target) => setOf(target, last(args, "output") ?? "out", asked));
    const whole = sets.filter((one) => one !== undefined);
    const folders = new Set(whole.map(({ folder }) => resolve(folder)));
    const ready = whole.length > 0 && folders.size === operands.length;
    return ready ? { sets: whole, io, quiet: flags.has("quiet"), dry: false } : undefined;
  } catch {
    return undefined;
  }
}

function setOf(target: string, output: string, asked: Parameters<typeof unchangedSet>[2]): Unchanged | undefined {
  if (!/\.ya?ml$/.test(target)) return undefined;
  const read = tryOrdinary(target);
  if (!("text" in read)) return undefined;
  return unchangedSet({ target, name: target, text: read.text, stage: stageIn(read.text) }, output, asked);
}
