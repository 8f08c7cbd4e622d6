import { isMap, isScalar, parseDocument, type YAMLError } from "yaml";
import type { Path } from "../core/diagnostic.ts";
import { bracketFault } from "./yaml-bracket-fault.ts";
import type { Excess } from "./yaml-limits.ts";

/** Lines of a file that cannot be read, left out so that the rest can. */
export interface LostLines {
  /** From where to where in the text. */
  readonly from: number;
  readonly to: number;
  /** Where they stand in the file: the block, and the key if it can be made out. */
  readonly path: Path;
  /** Keys that went with them, by their paths; "" where a key cannot be made out. */
  readonly keys: readonly Path[];
  /** What is wrong, and where in the text. */
  readonly code: YAMLError["code"];
  readonly at: readonly [from: number, to: number];
  /** A bracket without its other one, which says more than the code: where it stands in the text, and what is said. */
  readonly bracket?: Excess | undefined;
}

/** A line of the text with the place of its first letter. */
interface Line {
  readonly from: number;
  readonly text: string;
}

/** A file with more faults than these is not one with slips in it, and is not picked apart. */
const MOST_LOST = 20;
/** Blocks are read by themselves at most so often: it keeps a hostile file from taking long. */
const MOST_READ = 600;

/**
 * Returns the smallest blocks, by their indentation, that no YAML can be read from and without which the rest is YAML.
 * Each block of a map is read by itself: so a quotation mark or bracket that is not closed spoils only its own lines.
 * Undefined where nothing certain remains.
 */
export function lostLines(text: string): LostLines[] | undefined {
  if (/^(?:---|\.\.\.|%)/m.test(text)) return undefined;
  const budget = { left: MOST_READ };
  const lost = lostAmong(linesOf(text), [], budget);
  const few = lost.length > 0 && lost.length <= MOST_LOST && budget.left > 0;
  const rest = [{ from: 0, text: withoutLines(text, lost) }];
  return few && isSound(rest, "map") ? lost : undefined;
}

/** Returns a text with blanks in place of what is lost, so that everything else stays where it is. */
export function withoutLines(text: string, lost: readonly Pick<LostLines, "from" | "to">[]): string {
  return lost.reduce(
    (whole, { from, to }) => whole.slice(0, from) + whole.slice(from, to).replace(/[^\r\n]/g, " ") + whole.slice(to),
    text,
  );
}

interface Budget {
  left: number;
}

/** Returns what is lost of one block of a map: nothing, blocks inside it, or all of it. */
function lostIn(block: readonly Line[], holder: Path, budget: Budget): LostLines[] {
  budget.left--;
  if (budget.left <= 0 || isSound(block, "pair")) return [];
  const lines = block.filter(hasContent);
  const [head, ...rest] = lines;
  if (head === undefined) return [];
  const key = keyOf(head);
  const whole = () => [lossOf(block, holder)];
  if (key === undefined || rest.length === 0 || !/^\s*[^\s#].*:\s*(?:#.*)?$/.test(head.text)) return whole();
  // Entries of a list are counted: without one of them the others are no longer what they are called.
  if (!isSound([head], "pair") || rest.some(({ text }) => /^\s*-(?:\s|$)/.test(text))) return whole();
  const inside = lostAmong(block.slice(block.indexOf(head) + 1), [...holder, key], budget);
  if (inside.length === 0) return whole();
  const [{ from }] = block as readonly [Line];
  const kept = withoutLines(
    joined(block),
    inside.map((one) => ({ from: one.from - from, to: one.to - from })),
  );
  return isSound([{ from, text: kept }], "pair") ? inside : whole();
}

/**
 * Returns what is lost of blocks that stand beside one another. Inside a block they are all indented like the first: a
 * line that stands further out may belong to the block or beside it, and so may what follows, so that all is lost.
 */
function lostAmong(lines: readonly Line[], holder: Path, budget: Budget): LostLines[] {
  const indents = lines.filter(hasContent).map(indentOf);
  const level = Math.min(...indents);
  if (holder.length > 0 && indents[0] !== level) return [outdented(lines, holder)];
  return blocksOf(lines, level).flatMap((block) =>
    startOf(block) > level && block.some(hasContent) ? [lossOf(block, holder)] : lostIn(block, holder, budget),
  );
}

/** Returns the indentation of a block; that of one without content does not matter. */
function startOf(block: readonly Line[]): number {
  const head = block.find(hasContent);
  return head === undefined ? Number.POSITIVE_INFINITY : indentOf(head);
}

/** Returns all lines of a block as lost, with their keys in it and beside it. */
function outdented(lines: readonly Line[], holder: Path): LostLines {
  const loss = lossOf(lines, holder);
  const outer = loss.keys.map((path) => [...holder.slice(0, -1), ...path.slice(-1)]);
  return { ...loss, path: holder, keys: [holder, ...loss.keys, ...outer] };
}

/** Returns the blocks that stand beside one another: each begins at a line that is indented no more than this. */
function blocksOf(lines: readonly Line[], level: number): Line[][] {
  const blocks: Line[][] = [];
  for (const line of lines) {
    const last = blocks.at(-1);
    const begins = hasContent(line) && indentOf(line) <= level && !/^\s*-(?:\s|$)/.test(line.text);
    if (last === undefined || begins) blocks.push([line]);
    else last.push(line);
  }
  return blocks;
}

/** A tabulator is no indentation in YAML: what it stands before belongs to the line above. */
const indentOf = ({ text }: Line) => (/^ *\t/.test(text) ? 1000 : (/^ */.exec(text)?.[0].length ?? 0));

const hasContent = ({ text }: Line) => /^\s*[^\s#]/.test(text);

function linesOf(text: string): Line[] {
  const lines = text.match(/[^\n]*\n|[^\n]+$/g) ?? [];
  let from = 0;
  return lines.map((one) => {
    const line = { from, text: one };
    from += one.length;
    return line;
  });
}

const joined = (lines: readonly Line[]) => lines.map(({ text }) => text).join("");

/** Returns the word a line begins with, which would be its key; undefined where it begins otherwise. */
const keyOf = ({ text }: Line): string | undefined => /^\s*["']?([A-Za-z0-9][\w-]*)/.exec(text)?.[1];

const read = (lines: readonly Line[]) => parseDocument(joined(lines), { version: "1.2", uniqueKeys: false });

/** Whether lines are YAML: a map, or where a pair is wanted one of a single key, or nothing but comments. */
function isSound(lines: readonly Line[], wanted: "pair" | "map"): boolean {
  const { errors, warnings, contents } = read(lines);
  if (errors.length + warnings.length > 0) return false;
  if (wanted === "map") return isMap(contents);
  return contents === null || (isMap(contents) && contents.items.length === 1);
}

function lossOf(block: readonly Line[], holder: Path): LostLines {
  const lines = block.filter(hasContent);
  const [head, last] = [lines[0] as Line, lines.at(-1) as Line];
  const key = keyOf(head);
  const { errors, warnings } = read(block);
  const [error] = [...errors, ...warnings];
  const start = block[0]?.from ?? 0;
  const end = last.from + last.text.trimEnd().length;
  const indent = indentOf(head) % 1000;
  const whole = [head.from + indent, head.from + head.text.trimEnd().length] as const;
  const bracket = bracketFault(joined(block));
  const at = error === undefined ? whole : ([error.pos[0] + start, error.pos[1] + start] as const);
  return {
    from: head.from,
    to: end,
    path: key === undefined ? holder : [...holder, key],
    keys: [[...holder, key ?? ""], ...lines.slice(1).flatMap((line) => siblingOf(line, holder))],
    code: error?.code ?? (isWord(block) ? "MULTILINE_IMPLICIT_KEY" : "BAD_INDENT"),
    at: at[0] >= head.from && at[0] < end ? at : whole,
    ...(bracket === undefined ? {} : { bracket: { ...bracket, from: bracket.from + start, to: bracket.to + start } }),
  };
}

/** A line that is indented by mistake belongs beside the one above it. */
function siblingOf(line: Line, holder: Path): Path[] {
  const key = keyOf(line);
  return key === undefined ? [] : [[...holder, key]];
}

/** Whether lines are a text without any key. */
const isWord = (block: readonly Line[]) => isScalar(read(block).contents);
