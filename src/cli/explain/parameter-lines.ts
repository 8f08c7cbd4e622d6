import { hanging } from "./hanging.ts";
import { allowedWords, type ParameterField } from "./parameter-field.ts";
import { presetValue } from "./preset-value.ts";

/** A default longer than this stands on a line of its own. */
const SHORT = 16;

/** Returns a table of parameters: one row each, and below it the meaning and the words it may be. */
export function parameterLines(fields: readonly ParameterField[]): string[] {
  const heads = ["parameter", "symbol", "default", "unit", "allowed"];
  const rows = fields.map((field) => {
    const usual = usualWords(field);
    const allowed = allowedWords(field);
    return [
      field.key,
      field.symbol === field.key ? "" : field.symbol,
      usual.length > SHORT ? "see below" : usual,
      field.unit,
      meanings(field).length > 0 ? "one of these" : allowed,
    ];
  });
  const widths = heads.map((head, index) => Math.max(head.length, ...rows.map((cells) => cells[index]?.length ?? 0)));
  const line = (cells: readonly string[]) =>
    `  ${cells.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join("  ")}`.trimEnd();
  return [
    line(heads),
    line(widths.map((width) => "-".repeat(width))),
    ...fields.flatMap((field, index) => [line(rows[index] ?? []), ...below(field)]),
  ];
}

/** Returns the meaning, the words with theirs, and what the row had no room for. */
export function below(field: ParameterField): string[] {
  const usual = usualWords(field);
  const words = meanings(field);
  const widest = Math.max(0, ...words.map(([word]) => word.length));
  return [
    ...(field.description === "" ? [] : hanging("      ", field.description)),
    ...(field.how === undefined ? [] : hanging("      how: ", field.how)),
    ...words.flatMap(([word, meaning]) => hanging(`        ${word.padEnd(widest)}  `, meaning)),
    ...(usual.length > SHORT ? hanging("      default ", usual) : []),
    ...entries(field),
  ];
}

/** Returns the keys of one entry of a list. */
function entries({ entry }: ParameterField): string[] {
  return entry.flatMap((one) => {
    const allowed = [allowedWords(one), one.unit].filter((words) => words !== "").join(" ");
    const meaning = [one.description, allowed].filter((words) => words !== "").join(": ");
    return hanging(`        ${one.key}  `, meaning);
  });
}

/** Returns the words it may be with their meaning; none where the words say it themselves. */
function meanings({ words }: ParameterField): [string, string][] {
  const all = Object.entries(words ?? {});
  const plain = all.every(([word, meaning]) => word === meaning || meaning === "yes" || meaning === "no");
  return plain ? [] : all;
}

/** Returns the default in words. */
export function usualWords({ usual, derived }: ParameterField): string {
  if (usual === undefined) return derived ? "derived" : "left out";
  return Array.isArray(usual) && usual.length === 0 ? "none" : presetValue(usual).replaceAll('"', "");
}
