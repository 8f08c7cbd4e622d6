import { unitsOf } from "../core/quantity.ts";

const WORDS = unitsOf("length").filter((unit) => /^[a-z]+$/.test(unit) && unit !== "in");
/** What shows that a number goes on or has its unit; `in` before a small letter is the word: `0.5 in loops.low`. */
const GOES_ON = String.raw`[\w%°"'/]|\.\d|\s+\d+/\d|\s+x\s|\s*(?:${WORDS.join("|")})\b|\s*in\b(?! [a-z])`;
const BARE = String.raw`[+-]?\d+(?:\.\d+)?(?!${GOES_ON})`;

const ONE = new RegExp(`^${BARE}`);
const EACH = new RegExp(String.raw`(?<=^|[[,]\s*)${BARE}(?=\s*[\],])`, "g");
/** A key with what stands behind it: a list, or the beginning of a number. */
const KEYED = new RegExp(String.raw`([A-Za-z][\w-]*): (\[[^[\]]*\]|${BARE})`, "g");
/** Two or three numbers that no key stands before: a place, in plan or in space. */
const PLACE = new RegExp(String.raw`(?<!: )\[\s*${BARE}(?:\s*,\s*${BARE}){1,2}\s*\]`, "g");

/**
 * Returns what is to be set with ` mm` behind each length that has no unit: numbers, alone or in a list, behind a key
 * of `lengths` (`motor.plateTop: -4.9`), and places behind other words (`at: of A, [12, 40]`). All else stays as it is.
 */
export function withUnits(set: string, lengths: ReadonlySet<string>): string {
  const keyed = set.replace(KEYED, (all, key: string, value: string) => {
    return lengths.has(key) ? `${key}: ${value.startsWith("[") ? listed(value) : value.replace(ONE, "$& mm")}` : all;
  });
  return placesWithUnits(keyed);
}

/** Returns words with ` mm` behind the numbers of each place in them that has no units: `round [42.41, 120.2, 9]`. */
export function placesWithUnits(words: string): string {
  return words.replace(PLACE, listed);
}

const listed = (list: string) => list.replace(EACH, "$& mm");
