import type { Unit } from "../core/unit.ts";

/** Returns a number as a builder reads it: at most 4 significant digits, two decimals where a dimension needs them. */
export function figure(value: number, unit: Unit | "" = ""): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  const decimals = unit === "mm" || unit === "deg" ? 2 : Math.max(0, 3 - Math.floor(Math.log10(size)));
  const text = size >= 1e7 || size < 1e-4 ? value.toExponential(3) : value.toFixed(Math.min(decimals, 6));
  return text.includes(".") && !text.includes("e") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

/** Returns the figure with its unit. */
export function amount(value: number, unit: Unit): string {
  return unit === "" ? figure(value) : `${figure(value, unit)} ${unit}`;
}

export interface Column {
  readonly head: string;
  readonly right?: boolean;
}

/** Returns the lines of a table with aligned columns; the last column is never padded. */
export function columns(heads: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const width = heads.map(({ head }, index) => Math.max(head.length, ...rows.map((row) => (row[index] ?? "").length)));
  const line = (cells: readonly string[]) =>
    heads
      .map(({ right }, index) =>
        right ? (cells[index] ?? "").padStart(width[index] ?? 0) : (cells[index] ?? "").padEnd(width[index] ?? 0),
      )
      .join("  ")
      .trimEnd();
  return [line(heads.map(({ head }) => head)), line(width.map((size) => "-".repeat(size))), ...rows.map(line)];
}

/** Returns the words broken into lines of at most `width` letters. */
export function wrap(words: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/).filter((one) => one !== "")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Returns text with control characters made visible, so that a file's content cannot steer the terminal. */
export function harmless(text: string): string {
  return [...text].map((sign) => (isControl(sign.codePointAt(0) ?? 0) ? spelled(sign) : sign)).join("");
}

function isControl(code: number): boolean {
  return (code < 0x20 && code !== 0x0a && code !== 0x09) || (code >= 0x7f && code <= 0x9f);
}

function spelled(sign: string): string {
  return `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
}
