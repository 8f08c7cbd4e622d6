import { isMap, isScalar, type Pair, parseDocument, type YAMLMap } from "yaml";
import { type Rename, renamesOf } from "./formats.ts";
import { FORMAT } from "./preset-file.ts";

/** A stretch of a text, and what is to stand there. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** What is put into a preset besides its own words. */
export interface Additions {
  /** The first line, by which editors find the schema. */
  readonly modeline: string;
  /** Returns the lines below the last key of a block, for its keys and the blanks before each of them. */
  readonly below: (keys: readonly string[], indent: string) => readonly string[];
}

const MODELINE = /^# yaml-language-server:.*$/m;

/**
 * Returns a preset in the format of today: old names of keys are replaced where they stand, and lines are added at the
 * top and below the parameters or settings. Every other letter stays: comments, order, blank lines, quotation marks.
 * The text must be one that `readYaml` has read without a complaint.
 */
export function rewritten(text: string, { modeline, below }: Additions): string {
  const document = parseDocument(text, { version: "1.2" });
  const top = document.contents;
  if (!isMap(top)) return text;
  const format = pairOf(top, "format")?.value;
  const block = ["parameters", "settings"].map((key) => pairOf(top, key)?.value).find(isMap);
  const renames = renamesOf(document.toJS() as Readonly<Record<string, unknown>>);
  const edits = [
    ...edit(format, String(FORMAT)),
    ...(block === undefined ? [] : [...renamed(block, renames), ...added(block, text, renames, below)]),
  ];
  const changed = [...edits]
    .sort((one, other) => other.from - one.from)
    .reduce((whole, { from, to, text: put }) => whole.slice(0, from) + put + whole.slice(to), text);
  return MODELINE.test(changed) ? changed.replace(MODELINE, () => modeline) : `${modeline}\n${changed}`;
}

const pairOf = (map: YAMLMap, key: string): Pair | undefined =>
  map.items.find((pair) => isScalar(pair.key) && pair.key.value === key);

function edit(node: unknown, put: string): Edit[] {
  return isScalar(node) && node.range != null ? [{ from: node.range[0], to: node.range[1], text: put }] : [];
}

function renamed(block: YAMLMap, renames: readonly Rename[]): Edit[] {
  return renames.flatMap(({ from, to, value }) => {
    const pair = pairOf(block, from);
    if (pair === undefined) return [];
    const old = isScalar(pair.value) ? pair.value.value : undefined;
    return [...edit(pair.key, to), ...(value === undefined ? [] : edit(pair.value, String(value(old))))];
  });
}

/** A block in braces stands on a line of its own and is left as it is. */
function added(block: YAMLMap, text: string, renames: readonly Rename[], below: Additions["below"]): Edit[] {
  const names = block.items.flatMap(({ key }) => (isScalar(key) ? [key] : []));
  const [first] = names;
  const end = block.range?.[1];
  if (block.flow === true || first?.range == null || end === undefined) return [];
  const indent = text.slice(text.lastIndexOf("\n", first.range[0]) + 1, first.range[0]);
  const lines = below(
    names.map(({ value }) => renames.find(({ from }) => from === value)?.to ?? String(value)),
    indent,
  );
  if (lines.length === 0) return [];
  // What the last value has behind it, such as a comment, stays on its line.
  const line = text.indexOf("\n", Math.max(0, end - 1));
  const at = line < 0 ? text.length : line + 1;
  return [{ from: at, to: at, text: `${line < 0 ? "\n" : ""}${lines.join("\n")}\n` }];
}
