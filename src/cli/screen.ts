import type { Unit } from "../core/unit.ts";

/**
 * Returns a number as a builder reads it: at most 4 significant digits, two decimals where a dimension needs them, and
 * two digits of what is smaller than they show.
 */
export function figure(value: number, unit: Unit | "" = ""): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  const first = Math.floor(Math.log10(size));
  const decimals = unit === "mm" || unit === "deg" ? Math.max(2, 1 - first) : Math.max(0, 3 - first);
  const text = size >= 1e7 || size < 1e-4 ? value.toExponential(3) : value.toFixed(Math.min(decimals, 6));
  return text.includes(".") && !text.includes("e") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

/** Units of lives: what nine of ten bearings reach is known to two digits at best. */
const LIVES: readonly string[] = ["h", "Mrev"];

/** Returns a large number of a report to the digits that mean something; undefined where the usual rule does that. */
export function lasting(value: number, unit: string): string | undefined {
  const size = Math.abs(value);
  const digits = LIVES.includes(unit) ? 2 : 4;
  return size >= 10 ** digits && size < 1e9 && unit !== "mm" ? Number(value.toPrecision(digits)).toFixed(0) : undefined;
}

/** Returns the figure with its unit. */
export function amount(value: number, unit: Unit): string {
  return unit === "" ? figure(value) : `${figure(value, unit)} ${unit}`;
}

export interface Column {
  readonly head: string;
  readonly right?: boolean;
}

/** What fits on the screen. */
export const SCREEN = 98;

/** Returns the lines of a table with aligned columns; the last column goes on below itself where it is too long. */
export function columns(heads: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const width = heads.map(({ head }, index) => Math.max(head.length, ...rows.map((row) => (row[index] ?? "").length)));
  const last = heads.length - 1;
  const indent = width.slice(0, last).reduce((sum, size) => sum + size + 2, 0);
  const room = Math.max(20, SCREEN - indent);
  const line = (cells: readonly string[]): string[] => {
    const tails =
      heads[last]?.right === true ? [(cells[last] ?? "").padStart(width[last] ?? 0)] : wrap(cells[last] ?? "", room);
    const start = heads.slice(0, last).map(({ right }, index) => {
      const cell = cells[index] ?? "";
      return right ? cell.padStart(width[index] ?? 0) : cell.padEnd(width[index] ?? 0);
    });
    const [first = "", ...rest] = tails;
    return [[...start, first].join("  ").trimEnd(), ...rest.map((tail) => " ".repeat(indent) + tail)];
  };
  const rule = width.map((size, index) => "-".repeat(index === last ? Math.min(size, room) : size));
  return [...line(heads.map(({ head }) => head)), rule.join("  "), ...rows.flatMap(line)];
}

/** Returns the words broken into lines of at most `width` letters, the first one of at most `first`. */
export function wrap(words: string, width: number, first = width): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/).filter((one) => one !== "")) {
    const last = lines.at(-1);
    const room = lines.length === 1 ? first : width;
    if (last !== undefined && last.length + 1 + word.length <= room) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
