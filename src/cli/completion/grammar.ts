import { FAMILIES } from "../../parts/index.ts";
import { SUBJECTS } from "../../presets/schema/preset-schema.ts";
import { knownNames } from "../explain/known-names.ts";
import { PRINTER } from "../explain/parameter-page.ts";
import { STAGE } from "../explain/stage-page.ts";
import { COMMANDS, SHELLS } from "../help.ts";
import { ALL_TABLES } from "../stock/tables.ts";

/** What may stand somewhere: one of some words, and files where they are taken. */
export interface Choice {
  readonly words: readonly string[];
  readonly files: "none" | "presets" | "folders" | "any";
}

export interface OptionWords {
  /** With their dashes: `["-o", "--output"]`. */
  readonly names: readonly string[];
  readonly what: string;
  /** What stands behind it; undefined for a flag. */
  readonly value: Choice | undefined;
}

export interface CommandWords {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly OptionWords[];
  readonly operands: Choice;
}

/** A table whose rows and fields `stock` takes. */
export interface TableWords {
  readonly name: string;
  readonly rows: readonly string[];
  readonly fields: readonly string[];
}

/** The command line as a script that completes it needs it. */
export interface Grammar {
  readonly commands: readonly CommandWords[];
  readonly tables: readonly TableWords[];
}

const only = (...words: readonly string[]): Choice => ({ words, files: "none" });
const NOTHING = only();
const ANY: Choice = { words: [], files: "any" };
const PRESETS: Choice = { words: [], files: "presets" };

/** Returns the whole command line, from the tables that the program itself goes by. */
export function grammar(): Grammar {
  const names = Object.keys(COMMANDS);
  const known = operands();
  const commands = Object.entries(COMMANDS).map(([name, { summary, options }]) => ({
    name,
    summary,
    options: options.flatMap(([flag, what]) => optionWords(flag, what)),
    operands: known[name] ?? ANY,
  }));
  const help = { name: "help", summary: "how a command is used", options: [], operands: only(...names) };
  const tables = ALL_TABLES.map(({ name, rows, fields }) => ({
    name,
    rows: rows.map(({ key }) => key),
    fields: Object.keys(fields),
  }));
  return { commands: [...commands, help], tables };
}

/** What stands behind a command; where nothing is said here, files do. */
function operands(): Readonly<Record<string, Choice>> {
  const families = FAMILIES.map(({ name }) => name);
  const made: Choice = { words: families, files: "presets" };
  return {
    new: only(...SUBJECTS),
    make: made,
    check: made,
    report: PRESETS,
    compare: PRESETS,
    tram: PRESETS,
    parts: only(...families, PRINTER, STAGE),
    schema: only(...SUBJECTS),
    explain: only(...knownNames()),
    stock: only(...ALL_TABLES.map(({ name }) => name)),
    completion: only(...SHELLS),
  };
}

/** Reads `-o, --output folder` as the help has it; `--<field> value` is none: its names are those of the table. */
function optionWords(flag: string, what: string): OptionWords[] {
  if (flag.startsWith("--<")) return [];
  const [, names = "", value = ""] = /^((?:-[\w-]+, )?--[\w-]+)(?: (.+))?$/.exec(flag) ?? [];
  return [{ names: names.split(", "), what, value: value === "" ? undefined : valueWords(names, value) }];
}

function valueWords(names: string, value: string): Choice {
  if (value.includes("|")) return only(...value.split("|"));
  if (value === "folder") return { words: [], files: "folders" };
  if (value === "file") return PRESETS;
  const bars = ALL_TABLES.find(({ name }) => names === "--bar" && name === "bars");
  return bars === undefined ? NOTHING : only(...bars.rows.map(({ key }) => key));
}
