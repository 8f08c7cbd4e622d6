import { CST, Lexer } from "yaml";
import { spelled } from "../core/unprintable.ts";

/** What goes beyond the limits of a preset: from where to where in its text, what is wrong, and what to write. */
export interface Excess {
  readonly from: number;
  readonly to: number;
  readonly says: string;
  readonly set: string;
}

/** Larger files are not presets, in letters. */
const LONGEST = 256 * 1024;
/**
 * Words, signs and blanks: eight times as many as a large machine needs. What the parser takes grows with the square of
 * some of them (commas without values, anchors in a row), and a second is the most that opening a file may take.
 */
const MOST = 12_000;
/** Blocks and brackets inside one another: a bought item of a foot of a screw of a machine stands five deep. */
export const DEEPEST = 20;
/** One word, number or text, in letters: the longest that a preset holds are the reasons of `accept`. */
const LONGEST_TEXT = 1000;

const WORDS = ["scalar", "single-quoted-scalar", "double-quoted-scalar", "block-scalar", "alias", "anchor", "tag"];
const OPENING = ["flow-map-start", "flow-seq-start"];
const CLOSING = ["flow-map-end", "flow-seq-end"];
/** Signs of which each opens a block inside the one before it where they stand on one line. */
const NESTING = ["seq-item-ind", "explicit-key-ind"];
/** Marks that the lexer puts between what it finds; they are not in the text. */
const MARKS = ["doc-mode", "flow-error-end", "scalar"];

/** Returns the first thing in a text that no preset has; undefined where it may be handed to the parser. */
export function excessIn(text: string): Excess | undefined {
  if (text.length > LONGEST) {
    const says = `the file is ${Math.ceil(text.length / 1024)} kB long, a preset at most ${LONGEST / 1024} kB`;
    return { from: 0, to: 0, says, set: "a short one" };
  }
  return strangeSign(text) ?? excessOfTokens(text);
}

/** Signs that YAML does not have (YAML 1.2.2, 5.1), that turn text round, or that stand for bytes that are no text. */
const STRANGE = /[^\P{Cc}\t\n\r]|[\p{Cs}\u202a-\u202e\u2066-\u2069\ufffe\uffff\ufffd]|(?<!^)\ufeff|\r(?!\n)/u;

function strangeSign(text: string): Excess | undefined {
  const found = STRANGE.exec(text);
  if (found === null) return undefined;
  const [sign] = found;
  const place = { from: found.index, to: found.index + 1 };
  if (sign === "\ufffd") return { ...place, says: "these bytes are not text in UTF-8", set: "the file saved as UTF-8" };
  if (sign === "\r")
    return { ...place, says: "a carriage return stands alone, which ends no line", set: "line ends as LF or CR LF" };
  return { ...place, says: `a sign that cannot be seen stands here: ${spelled(sign)}`, set: "the text without it" };
}

/** Reads the text sign by sign, which takes no longer than it is long, and stops at the first excess. */
function excessOfTokens(text: string): Excess | undefined {
  let [at, count, brackets, onLine] = [0, 0, 0, 0];
  for (const source of new Lexer().lex(text)) {
    const type = CST.tokenType(source);
    const isMark = type !== null && MARKS.includes(type) && source.length === 1 && !text.startsWith(source, at);
    const from = at;
    if (!isMark) at += source.length;
    count++;
    if (type === null || WORDS.includes(type)) {
      if (!isMark && source.length > LONGEST_TEXT) return longWord(from, source.length);
    } else if (type === "newline") onLine = 0;
    else if (OPENING.includes(type)) brackets++;
    else if (CLOSING.includes(type)) brackets = Math.max(0, brackets - 1);
    else if (NESTING.includes(type)) onLine++;
    if (brackets + onLine > DEEPEST) return tooDeep(from, at);
    if (count > MOST) {
      const says = `the file goes on for more than ${MOST} words and signs, and a preset has fewer`;
      return { from, to: at, says, set: "a shorter one" };
    }
  }
  return undefined;
}

function longWord(from: number, length: number): Excess {
  const says = `a text of ${length} letters stands here, and in a preset one has at most ${LONGEST_TEXT}`;
  return { from, to: from + length, says, set: "a shorter text; what explains stands behind #" };
}

/** Returns what is said of blocks that are nested too deeply. */
export function tooDeep(from: number, to: number): Excess {
  const says = `blocks are nested more than ${DEEPEST} deep`;
  return { from, to, says, set: "key: value, one per line, indented by blanks" };
}
