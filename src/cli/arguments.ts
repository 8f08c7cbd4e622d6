import yargs from "yargs";
import { nearest } from "../core/nearest.ts";
import { refuseTraps } from "./argument-traps.ts";
import { COMMANDS } from "./help.ts";
import { trouble } from "./io.ts";
import { restored, sealed } from "./sealed.ts";

/** A command line, read as text only: nothing is guessed to be a number. */
export interface Arguments {
  readonly command: string;
  readonly operands: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: Readonly<Record<string, readonly string[]>>;
}

export const FLAGS = ["json", "quiet", "verbose", "force", "dry-run", "help", "version"];
/** Answers to what `new` asks. */
const ANSWERS = ["name", "units", "screws", "bar", "frame", "plate", "lift", "loops", "from"];
export const VALUES = ["output", "set", "printer", "preset", "probe", "spring", "messages", "color", ...ANSWERS];
export const ALIASES = { output: "o", quiet: "q", verbose: "v", help: "h" } as const;

const OPTIONS = { flags: FLAGS, values: VALUES, aliases: ALIASES };

/** Returns the command line as command, operands, flags and values; throws a trouble that names the right flag. */
export function readArguments(argv: readonly string[]): Arguments {
  refuseTraps(argv, OPTIONS);
  const parsed = yargs(sealed(argv, OPTIONS))
    .help(false)
    .version(false)
    .parserConfiguration({
      "parse-numbers": false,
      "parse-positional-numbers": false,
      "boolean-negation": false,
      "camel-case-expansion": false,
      "dot-notation": false,
      "duplicate-arguments-array": true,
      "strip-aliased": true,
    })
    .options(Object.fromEntries(FLAGS.map((flag) => [flag, { type: "boolean" as const }])))
    .options(Object.fromEntries(VALUES.map((value) => [value, { type: "string" as const, requiresArg: true }])))
    .alias(ALIASES)
    // What the parser complains of is read below, in English.
    .detectLocale(false)
    .exitProcess(false)
    .fail((message) => {
      const short = /following: (\S+)/.exec(message)?.[1] ?? "";
      const name = Object.entries(ALIASES).find(([, alias]) => alias === short)?.[0] ?? short;
      throw trouble(name === "" ? message.replace(/\s+/g, " ") : `--${name} needs a value behind it`);
    })
    .parseSync() as Record<string, unknown> & { _: (string | number)[] };
  const [command = "", ...operands] = parsed._.map((word) => restored(String(word)));
  const given = Object.entries(parsed).flatMap(([name, value]) =>
    name === "_" || name === "$0" ? [] : [[restored(name), value] as const],
  );
  const values = valuesOf(given);
  return { command, operands, flags: flagsOf(given), values };
}

type Entries = readonly (readonly [string, unknown])[];

function flagsOf(given: Entries): Set<string> {
  const on = (value: unknown) => [value].flat().includes(true);
  return new Set(given.filter(([name, value]) => FLAGS.includes(name) && on(value)).map(([name]) => name));
}

function valuesOf(given: Entries): Record<string, string[]> {
  return Object.fromEntries(
    given.filter(([name]) => !FLAGS.includes(name)).map(([name, value]) => [name, [value].flat().map(typedValue)]),
  );
}

/** An option that is not in the table and has nothing behind it is `true`: no value. */
const typedValue = (value: unknown) => (value === true ? "" : restored(String(value)));

/** Returns the last value of an option: the one that counts where it is given twice. */
export const last = ({ values }: Arguments, name: string): string | undefined => values[name]?.at(-1);

/** Throws when a flag is used that the command does not have, with the nearest one that it has. */
export function refuseStrangers({ command, flags, values }: Arguments): void {
  const options = COMMANDS[command]?.options ?? [];
  const known = options.flatMap(([flag]) => [...flag.matchAll(/--([a-z-]+)/g)].map((match) => match[1] ?? ""));
  // `--<field> value`: the names are those of a table.
  const open = options.some(([flag]) => flag.startsWith("--<"));
  const named = Object.keys(values).filter((name) => !open || VALUES.includes(name));
  const stranger = [...flags, ...named].find((name) => !known.includes(name));
  if (stranger !== undefined) {
    const close = nearest(stranger.replace(/^no-/, ""), known);
    const hint = close === undefined ? `tramwright ${command} --help lists its options` : `the nearest is --${close}`;
    throw trouble(`${command} has no option ${dashed(stranger)}; ${hint}`);
  }
  const empty = Object.keys(values).find((name) => values[name]?.includes(""));
  if (empty !== undefined) throw trouble(`${dashed(empty)} needs a value behind it`);
}

const dashed = (name: string) => `${name.length === 1 ? "-" : "--"}${name}`;

/** Returns which of the words an option was given, the usual one where it was not. */
export function chosen<Word extends string>(args: Arguments, name: string, words: readonly Word[], usual: Word): Word {
  const given = last(args, name);
  if (given === undefined) return usual;
  const found = words.find((word) => word === given);
  if (found !== undefined) return found;
  throw trouble(`--${name} takes ${words.slice(0, -1).join(", ")} or ${words.at(-1)}, not ${given}`);
}

/** Throws where two things are asked for that exclude one another. */
export function refuseContradictions({ flags, operands, values }: Arguments): void {
  if (flags.has("quiet") && flags.has("verbose")) throw trouble("--quiet tells less and --verbose more: leave one out");
  const read = [...operands, ...["printer", "preset", "from"].flatMap((name) => values[name] ?? [])];
  if (read.filter((word) => word === "-").length > 1)
    throw trouble("standard input can be read once, and - stands there more than once");
}
