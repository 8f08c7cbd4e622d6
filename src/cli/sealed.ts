import type { OptionNames } from "./argument-traps.ts";

/** Behind this sign the parser takes a word as it stands. */
const SEAL = "\u0001";

/**
 * Returns the words of a command line so that yargs changes none of them: it turns a lone `-` into nothing, `-12,80,0.1`
 * into flags, `--h` into -h and `-oprints` into six of them, takes quotation marks off, and `false` behind a flag for
 * its value. Letters that stand together are parted; what is no option is sealed.
 */
export function sealed(words: readonly string[], options: OptionNames): string[] {
  const end = words.indexOf("--");
  const until = end < 0 ? words.length : end;
  return [
    ...words.slice(0, until).flatMap((word) => sealedWord(word, options)),
    ...words.slice(until, until + 1),
    ...words.slice(until + 1).map((word) => `${SEAL}${word}`),
  ];
}

/** Returns a word as it was typed. */
export const restored = (word: string): string => (word.startsWith(SEAL) ? word.slice(SEAL.length) : word);

function sealedWord(word: string, options: OptionNames): string[] {
  const [, name = "", value] = /^--([^=]+)(?:=([\s\S]*))?$/.exec(word) ?? [];
  if (name !== "") {
    const long = `--${name.length === 1 ? SEAL : ""}${name}`;
    return [value === undefined ? long : `${long}=${SEAL}${value}`];
  }
  return /^-[A-Za-z]/.test(word) ? parted(word.slice(1), options) : [`${SEAL}${word}`];
}

/** Parts `qoprints` into `-q` and `--output=prints`; a letter that nobody knows is left to be refused. */
function parted(letters: string, options: OptionNames): string[] {
  const [letter = "", ...others] = letters;
  const rest = others.join("");
  const name = options.values.find((one) => options.aliases[one] === letter);
  if (name !== undefined) return rest === "" ? [`-${letter}`] : [`--${name}=${SEAL}${rest.replace(/^=/, "")}`];
  return [`-${letter}`, ...(/^[A-Za-z]/.test(rest) ? parted(rest, options) : [])];
}
