import { allowedWords, type ParameterField } from "../explain/parameter-field.ts";
import { usualWords } from "../explain/parameter-lines.ts";
import { type Block, planBlocks } from "../explain/stage-page.ts";
import { comment } from "./comment.ts";

/** Returns, as comments, the keys of a block of the plan that are not written in it, each with its default. */
export function alsoLines(indent: string, key: string, written: readonly string[]): string[] {
  const fields = fieldsOf(key).filter((field) => !written.includes(field.key) && field.entry.length === 0);
  if (fields.length === 0) return [];
  const shown = fields.map((field) => `${field.key}: ${usualOf(field)}`);
  const widest = Math.max(...shown.map(({ length }) => length));
  return [
    ...comment(indent, "", "also, where it is not as usual:"),
    ...fields.flatMap((field, index) => comment(indent, `  ${(shown[index] ?? "").padEnd(widest)}  `, told(field))),
  ];
}

const usualOf = (field: ParameterField) =>
  field.usual === undefined ? "..." : `${usualWords(field)}${field.unit === "" ? "" : ` ${field.unit}`}`;

function told(field: ParameterField): string {
  const allowed = allowedWords(field);
  const unit = field.unit === "" || allowed === "" ? "" : ` ${field.unit}`;
  return [field.description, `${allowed}${unit}`].filter((words) => words !== "").join("; ");
}

const known = new Map<string, Block>();

function fieldsOf(key: string): readonly ParameterField[] {
  if (known.size === 0) for (const block of planBlocks()) known.set(block.key, block);
  return known.get(key)?.fields ?? [];
}
