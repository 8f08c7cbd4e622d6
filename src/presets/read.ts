import {
  type Document,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  parse as parseYaml,
  type Scalar,
  visit,
  type YAMLError,
  type YAMLMap,
} from "yaml";
import type { DefectName } from "../core/defects.ts";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import type { Place } from "./place.ts";
import { strangeFile } from "./strange-file.ts";
import { bracketFault } from "./yaml-bracket-fault.ts";
import { faultsIn, MOST_ALIASES } from "./yaml-faults.ts";
import { type Excess, excessIn } from "./yaml-limits.ts";
import { type LostLines, lostLines, withoutLines } from "./yaml-lost.ts";
import { yamlWords } from "./yaml-words.ts";

export type { Place } from "./place.ts";

/** The faults of notation that the reader tells apart. */
export type NotationFault = YAMLError["code"];

/** A Diagnostic with its place in a file. */
export interface Located {
  readonly file: string;
  readonly place: Place | undefined;
  readonly diagnostic: Diagnostic;
}

/** A YAML file as plain data that knows where each value stands. */
export interface YamlFile {
  readonly name: string;
  /** As it was read; undefined where there was nothing to read. */
  readonly text?: string;
  readonly data: unknown;
  readonly place: (path: Path) => Place | undefined;
  readonly complaints: readonly Located[];
  /** Keys of lines that no YAML can be read from, by their paths ("" for any): the data hold the rest. */
  readonly lost?: readonly Path[];
  /** What is to be told of the file beside its errors. */
  readonly notes?: readonly Located[];
}

const NOTATION = "key: value, one per line, indented by blanks, text with : or # in quotation marks";

/** The beginning of a file, for what is missing in it or concerns all of it. */
export const TOP: Place = { line: 1, column: 1, width: 1, text: "" };

/** Returns a YAML 1.2 file as data. Never throws: what is wrong with the text is among the complaints. */
export function readYaml(name: string, text: string): YamlFile {
  const strange = strangeFile(name, text);
  if (strange !== undefined) return broken(name, strange.says, strange.set, TOP, NO_YAML);
  const excess = excessIn(text);
  if (excess !== undefined) return broken(name, excess.says, excess.set, plainPlace(text, excess.from, excess.to));
  try {
    const document = parsed(text);
    if (document.errors.length + document.warnings.length === 0) return fileOf(name, text, document, []);
    const lost = lostLines(text) ?? [];
    const rest = lost.length === 0 ? document : parsed(withoutLines(text, lost));
    return fileOf(name, text, rest, lost);
  } catch {
    return broken(name, "the file cannot be read", NOTATION);
  }
}

const parsed = (text: string) => parseDocument(text, { version: "1.2", uniqueKeys: false, strict: true });

/** Returns a parsed text as data with all that is wrong with it; each block of lines left out is told once. */
function fileOf(name: string, text: string, document: Document.Parsed, lost: readonly LostLines[]): YamlFile {
  const lines = new LineCounter();
  for (let end = 0; end >= 0; end = text.indexOf("\n", end) + 1 || -1) lines.addNewLine(end);
  const at = (from: number, to: number) => placeAt(text, lines, from, to);
  const left = lost.map(({ code, at: [from, to], path, bracket }) => {
    const [words, where] = bracket === undefined ? [yamlWords(code), at(from, to)] : toldOf(bracket, at);
    const { diagnostic, place } = complaint(name, ...words, where, LEFT_OUT);
    return { file: name, place, diagnostic: { ...diagnostic, path } };
  });
  // Where nothing certain remains what is told behind the first fault may be due to it.
  const notation = [...document.errors, ...document.warnings].slice(0, 1).map(({ code, pos }) => {
    const bracket = bracketFault(text);
    const [words, where] = bracket === undefined ? [yamlWords(code), at(pos[0], pos[1])] : toldOf(bracket, at);
    return complaint(name, ...words, where);
  });
  const faults = faultsIn(document).map(({ from, to, says, set }) => complaint(name, says, set, at(from, to)));
  const twice: Located[] = [];
  visit(document, {
    // The library compares each key with each other one, which takes long in a long map.
    Map: (_, map, around) => {
      for (const twin of twins(map)) twice.push(twinComplaint(name, twin, pathOf([...around, map]), at));
    },
  });
  const unreadable = notation.length + faults.length > 0;
  const data: unknown = unreadable ? undefined : document.toJS({ maxAliasCount: MOST_ALIASES });
  const complaints = [...left, ...notation, ...faults, ...twice];
  const keys = lost.length === 0 ? {} : { lost: lost.flatMap((one) => one.keys) };
  return { name, text, data, complaints, ...keys, place: (path) => locate(document, path, at) };
}

function toldOf({ from, to, says, set }: Excess, at: At): readonly [words: readonly [string, string], where: Place] {
  return [[says, set], at(from, to)];
}

const LEFT_OUT = "these lines cannot be read, and nothing is said of what follows from them";

/** Returns a value typed on the command line as a preset would hold it: 12, true, "13 in", [1, 2], { row: "608" }. */
export function readValue(text: string): unknown {
  try {
    return parseYaml(text, { version: "1.2", maxAliasCount: 0 }) as unknown;
  } catch {
    return text;
  }
}

interface Twin {
  readonly first: Scalar;
  readonly second: Scalar;
}

/** Returns the keys of a map that are there already, each with the first of them. */
function twins({ items }: YAMLMap): Twin[] {
  const seen = new Map<string, Scalar>();
  return items.flatMap(({ key }) => {
    if (!isScalar(key)) return [];
    // A number and the same number as text are one key of the data.
    const first = seen.get(String(key.value));
    if (first === undefined) seen.set(String(key.value), key);
    return first === undefined ? [] : [{ first, second: key }];
  });
}

function twinComplaint(file: string, { first, second }: Twin, path: Path, at: At): Located {
  const [says, set] = yamlWords("DUPLICATE_KEY");
  const line = placeOf(first, at)?.line;
  const where = `${presentedKey(second)}: ${says}, first in line ${line ?? 1}`;
  const { diagnostic, place } = complaint(file, where, set, placeOf(second, at) ?? TOP);
  const why = "only one of two things of one name can be meant, and nothing says which";
  return { file, place, diagnostic: { ...diagnostic, path: [...path, String(second.value)], why } };
}

const presentedKey = ({ value }: Scalar) => String(value).slice(0, 40);

/** Returns the keys and numbers that lead from the top to the last of nodes that lie in one another. */
function pathOf(around: readonly unknown[]): Path {
  return around.flatMap((node, index): Path => {
    const next = around[index + 1];
    if (isPair(node))
      return next !== undefined && next === node.value ? [String((node.key as Scalar | null)?.value)] : [];
    return isSeq(node) && next !== undefined ? [node.items.indexOf(next)] : [];
  });
}

type At = (from: number, to: number) => Place;

/** Follows the path as far as the file goes and returns the value there, or the key where the value is a block. */
function locate(document: Document.Parsed, path: Path, at: At): Place | undefined {
  let node: unknown = document.contents;
  let found: Place | undefined;
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
      if (pair === undefined) break;
      node = pair.value;
      found = placeOf(isScalar(node) && node.value !== null ? node : pair.key, at) ?? found;
    } else if (isSeq(node)) {
      node = node.items[Number(step)];
      found = placeOf(node, at) ?? found;
    } else break;
  }
  return found;
}

function placeOf(node: unknown, at: At): Place | undefined {
  const range = (node as Node | undefined)?.range;
  return range == null ? undefined : at(range[0], range[1]);
}

function placeAt(text: string, lines: LineCounter, from: number, to: number): Place {
  const { line, col } = lines.linePos(from);
  const start = from - (col - 1);
  const end = text.indexOf("\n", from);
  const whole = text.slice(start, end < 0 ? undefined : end).replace(/\r$/, "");
  return { line, column: col, width: Math.max(1, Math.min(to - from, whole.length - col + 1)), text: whole };
}

/** Returns a place in a text that the parser has not seen. */
function plainPlace(text: string, from: number, to: number): Place {
  const lines = new LineCounter();
  for (let end = 0; end >= 0 && end <= from; end = text.indexOf("\n", end) + 1 || -1) lines.addNewLine(end);
  return placeAt(text, lines, from, to);
}

function broken(name: string, says: string, set: string, place = TOP, why = UNCERTAIN): YamlFile {
  return { name, data: undefined, place: () => undefined, complaints: [complaint(name, says, set, place, why)] };
}

const UNCERTAIN = "the file cannot be read as YAML, so nothing in it is certain";
const NO_YAML = "what a part or a machine is made from stands in its preset alone; other files are made from that";

function complaint(file: string, says: string, set: string, place: Place, why = UNCERTAIN): Located {
  const diagnostic = {
    name: "preset-does-not-resolve" satisfies DefectName,
    level: "error",
    path: [],
    says,
    why,
    set,
  } as const;
  return { file, place, diagnostic };
}
