import { ITEM_GUIDES } from "../../parts/guides.ts";
import type { ParameterField } from "../explain/parameter-field.ts";
import { presetValue } from "../explain/preset-value.ts";
import { comment } from "./comment.ts";

interface Written {
  readonly field: ParameterField;
  /** What is written; undefined for the default. */
  readonly value?: unknown;
  /** How the value is found. */
  readonly how: string | undefined;
  /** Whether the line is there; else it is a comment, ready to be used. */
  readonly set: boolean;
}

const TYPICAL = "  # typical, not measured";

/** Returns the lines of a key in a preset: what it means and allows, how it is measured, and the value itself. */
export function keyLines(indent: string, { field, value = field.usual, how, set }: Written): string[] {
  const { key, words, table, usual } = field;
  const measured = how ?? (table === undefined ? undefined : ITEM_GUIDES[table]);
  return [
    ...comment(indent, "", headline(field)),
    ...meanings(words).flatMap(([word, meaning]) => comment(indent, `  ${word}  `, meaning)),
    ...entries(field).flatMap(([lead, words]) => comment(indent, lead, words)),
    ...(measured === undefined ? [] : howLines(indent, measured)),
    value === undefined
      ? `${indent}# ${key}:${missing(field)}`
      : `${indent}${set ? "" : "# "}${key}: ${presetValue(asTyped(value, words))}${set && value === usual && isMeasured(field, how) ? TYPICAL : ""}`,
  ];
}

const missing = ({ derived }: ParameterField) =>
  derived ? "  # left out, the part works it out" : "  # left out: not set";

const CHOICE = "choose: ";

function howLines(indent: string, how: string): string[] {
  return how.startsWith(CHOICE)
    ? comment(indent, "choose   ", how.slice(CHOICE.length))
    : comment(indent, "measure  ", how);
}

/** Returns the keys of one entry, where the value is a list of maps. */
function entries({ entry }: ParameterField): [string, string][] {
  return entry.map((one) => [`  ${one.key}: `, headline({ ...one, symbol: "" })]);
}

/** Whether somebody could measure it: a printing material or a choice has nothing to measure. */
const isMeasured = ({ table, unit }: ParameterField, how: string | undefined) =>
  table === undefined ? unit !== "" && how?.startsWith(CHOICE) !== true : table !== "materials";

/** Returns meaning, symbol, and what is allowed: `belt width (w_b), 3 to 30 mm`. */
function headline(field: ParameterField): string {
  const { description, symbol, key, unit, range, table, list } = field;
  const named = symbol === "" || symbol === key ? "" : ` (${symbol})`;
  const allowed = range === undefined ? rowsOf(table) : `${range} ${unit}`.trim();
  const several = list ? `a list${allowed === "" ? "" : ` of ${allowed.replace("a row", "rows")}`}` : allowed;
  return [`${description}${named}`, several].filter((words) => words !== "").join(", ");
}

const rowsOf = (table: string | undefined) => (table === undefined ? "" : `a row of tramwright stock ${table}`);

/** Returns the words it may be, padded to one width; those that explain themselves stand in one line. */
function meanings(words: ParameterField["words"]): [string, string][] {
  const all = Object.entries(words ?? {});
  if (all.every(([word, meaning]) => word === meaning || meaning === "yes" || meaning === "no"))
    return all.length === 0 ? [] : [["one of", all.map(([word]) => word).join(", ")]];
  const widest = Math.max(...all.map(([word]) => word.length));
  return all.map(([word, meaning]) => [word.padEnd(widest), meaning]);
}

/** A word of digits is written as a number: both are read. */
const asTyped = (value: unknown, words: ParameterField["words"]) =>
  words !== undefined && typeof value === "string" && String(Number(value)) === value ? Number(value) : value;
