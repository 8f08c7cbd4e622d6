import yargs from "yargs";
import { nearest } from "../core/nearest.ts";
import { COMMANDS } from "./help.ts";
import { trouble } from "./io.ts";

/** A command line, read as text only: nothing is guessed to be a number. */
export interface Arguments {
  readonly command: string;
  readonly operands: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: Readonly<Record<string, readonly string[]>>;
}

const FLAGS = ["json", "quiet", "force", "dry-run", "help", "version"];
/** Answers to what `new` asks. */
const ANSWERS = ["name", "units", "screws", "bar", "plate", "lift", "loops", "from"];
const VALUES = ["output", "set", "printer", "preset", "probe", "spring", "color", ...ANSWERS];
const ALIASES = { output: "o", quiet: "q", help: "h" } as const;

/** Returns the command line as command, operands, flags and values; throws a trouble that names the right flag. */
export function readArguments(argv: readonly string[]): Arguments {
  const stuck = argv.find((word) => FLAGS.some((flag) => word.startsWith(`--${flag}=`)));
  if (stuck !== undefined) throw trouble(`${stuck.split("=")[0]} takes no value`);
  const parsed = yargs(argv.map(keepDash))
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
    .exitProcess(false)
    .fail((message) => {
      const short = /following: (\S+)/.exec(message)?.[1] ?? "";
      const name = Object.entries(ALIASES).find(([, alias]) => alias === short)?.[0] ?? short;
      throw trouble(name === "" ? message.replace(/\s+/g, " ") : `--${name} needs a value behind it`);
    })
    .parseSync() as Record<string, unknown> & { _: (string | number)[] };
  const [command = "", ...operands] = parsed._.map((word) => restoreDash(String(word)));
  const given = Object.entries(parsed).filter(([name]) => name !== "_" && name !== "$0");
  const values = valuesOf(given);
  const [empty] = VALUES.filter((name) => values[name]?.includes(""));
  if (empty !== undefined) throw trouble(`--${empty} needs a value behind it`);
  return { command, operands, flags: flagsOf(given), values };
}

/** yargs turns a lone "-" into an empty text, and takes `-12,80,0.1` for flags; behind this sign they are words. */
const GUARD = "\u0001";
const keepDash = (word: string) => (word === "-" || /^-[.\d][^,]*,/.test(word) ? `${GUARD}${word}` : word);
const restoreDash = (word: string) => (word.startsWith(GUARD) ? word.slice(GUARD.length) : word);

type Entries = readonly (readonly [string, unknown])[];

function flagsOf(given: Entries): Set<string> {
  return new Set(given.filter(([name, value]) => FLAGS.includes(name) && value === true).map(([name]) => name));
}

function valuesOf(given: Entries): Record<string, string[]> {
  return Object.fromEntries(
    given
      .filter(([name]) => !FLAGS.includes(name))
      .map(([name, value]) => [name, (Array.isArray(value) ? value : [value]).map((one) => restoreDash(String(one)))]),
  );
}

/** Returns the last value of an option: the one that counts where it is given twice. */
export const last = ({ values }: Arguments, name: string): string | undefined => values[name]?.at(-1);

/** Throws when a flag is used that the command does not have, with the nearest one that it has. */
export function refuseStrangers({ command, flags, values }: Arguments): void {
  const text = (COMMANDS[command]?.options ?? []).map(([flag]) => flag).join(" ");
  const known = [...text.matchAll(/--([a-z-]+)/g)].map((match) => match[1] ?? "");
  const stranger = [...flags, ...Object.keys(values)].find((name) => !known.includes(name));
  if (stranger === undefined) return;
  const close = nearest(stranger, known);
  const hint = close === undefined ? `tramwright ${command} --help lists its options` : `the nearest is --${close}`;
  const dashes = stranger.length === 1 ? "-" : "--";
  throw trouble(`${command} has no option ${dashes}${stranger}; ${hint}`);
}
