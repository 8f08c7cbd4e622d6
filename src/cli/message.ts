import type { Diagnostic, Level } from "../core/diagnostic.ts";
import { harmless, oneLine } from "../core/unprintable.ts";
import type { Located } from "../presets/read.ts";
import { excerpt } from "./excerpt.ts";
import type { Ink, Paint } from "./io.ts";
import { amount, SCREEN, wrap } from "./screen.ts";

const INK: Readonly<Record<Level, Ink>> = { error: "red", warning: "yellow", note: "blue" };
const WIDTH = 96;
/** How far what goes on below the first line stands in. */
const INDENT = 4;

/** Returns the messages in the order of their places, equal ones once. */
export function inOrder(messages: readonly Located[]): Located[] {
  const seen = new Set<string>();
  const once = messages.filter(({ file, place, diagnostic: { name, says } }) => {
    const key = [file, place?.line, place?.column, name, says].join("\n");
    const fresh = !seen.has(key);
    seen.add(key);
    return fresh;
  });
  return once.sort((a, b) => {
    if (a.file !== b.file) return a.file < b.file ? -1 : 1;
    return (a.place?.line ?? 0) - (b.place?.line ?? 0) || (a.place?.column ?? 0) - (b.place?.column ?? 0);
  });
}

/** Returns where in which file something stands, in the form that editors jump to. */
const whereabouts = ({ file, place }: Located) =>
  oneLine(place === undefined ? file : `${file}:${place.line}:${place.column}`);

/**
 * Returns one message as lines: where, what, the line of the file with marks, then name, numbers, reason and cure. Of a
 * note the latter only when `verbose`.
 */
export function messageLines(message: Located, paint: Paint, verbose = false): string[] {
  const { place, diagnostic } = message;
  const { level, name, says, why, set } = diagnostic;
  const where = whereabouts(message);
  const brief = level === "note" && !verbose;
  // A note asks for nothing: it is told in short.
  const full: [string, string][] = [["defect", name], ...numbers(diagnostic), ["why", why], ["set", set]];
  const rows = brief ? full.slice(0, 1) : full;
  const detail = rows.flatMap(([head, words]) =>
    (head === "found" ? [words] : wrap(harmless(words), WIDTH - 10)).map(
      (line, index) => `  ${paint("faint", (index === 0 ? head : "").padEnd(8))}${line}`,
    ),
  );
  const line = place === undefined || brief ? [] : excerpt(place);
  const [first = "", ...more] = wrap(harmless(says), SCREEN - INDENT, SCREEN - `${where}: ${level}: `.length);
  return [
    `${where}: ${paint(INK[level], `${level}:`)} ${paint("bold", first)}`,
    ...more.map((line) => `${" ".repeat(INDENT)}${paint("bold", line)}`),
    ...line,
    ...detail,
  ];
}

/** Returns one message as one line, for editors that collect them: where, level, what, and the defect's name. */
export function messageLine(message: Located, paint: Paint): string {
  const { level, name, says } = message.diagnostic;
  const words = harmless(says.replace(/\s+/g, " "));
  return `${whereabouts(message)}: ${paint(INK[level], `${level}:`)} ${words} [${name}]`;
}

function numbers({ found, limit }: Diagnostic): [string, string][] {
  if (found === undefined) return [];
  const is = amount(found.value, found.unit);
  if (limit === undefined) return [["found", is]];
  const gap = found.value - limit.value;
  const by = amount(Math.abs(gap), found.unit);
  return [["found", `${is}     limit  ${amount(limit.value, limit.unit)}     ${gap > 0 ? "over" : "under"} by  ${by}`]];
}

/** Returns a message as plain data for `--json`. */
export function messageData({ file, place, diagnostic }: Located): object {
  const at = place === undefined ? {} : { line: place.line, column: place.column };
  return { file, ...at, ...diagnostic };
}
