import { trouble } from "./io.ts";

/** The options there are, by name, and the letter that some of them have. */
export interface OptionNames {
  readonly flags: readonly string[];
  readonly values: readonly string[];
  readonly aliases: Readonly<Record<string, string>>;
}

/**
 * Throws where the parser would silently take a word for something else than was typed: a value behind a flag, a long
 * option with one dash, a name that every JavaScript object has. What stands behind `--` is not looked at.
 */
export function refuseTraps(words: readonly string[], options: OptionNames): void {
  const end = words.indexOf("--");
  for (const word of end < 0 ? words : words.slice(0, end)) {
    const wrong = wrongWord(word, options);
    if (wrong !== undefined) throw trouble(wrong);
  }
}

function wrongWord(word: string, { flags, values, aliases }: OptionNames): string | undefined {
  const [, dashes = "", name = "", stuck = ""] = /^(--?)([^=]*)(=?)/.exec(word) ?? [];
  if (dashes === "" || word === "-") return undefined;
  if (dashes === "--" && (name in {} || ["", "_", "$0"].includes(name))) return `there is no option ${dashes}${name}`;
  if (dashes === "-" && name.length > 2 && [...flags, ...values].includes(name))
    return `--${name} is written with two dashes`;
  const long = Object.entries(aliases).find(([, letter]) => dashes === "-" && letter === name)?.[0] ?? name;
  return stuck !== "" && flags.includes(long) ? `${dashes}${name} takes no value` : undefined;
}
