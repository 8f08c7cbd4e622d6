import { readValue } from "../../presets/read.ts";
import type { ParameterField } from "../explain/parameter-field.ts";
import { withSettings } from "../settings.ts";
import { askAll } from "./ask-all.ts";
import { keyQuestions } from "./key-questions.ts";
import type { Wanted } from "./wanted.ts";

interface Keys {
  readonly schema: unknown;
  readonly fields: readonly ParameterField[];
  /** The keys that are asked for, in order. */
  readonly first: readonly string[];
  readonly how: Readonly<Partial<Record<string, string>>>;
}

/** Returns the values that were given or answered and are not what is usual; undefined when the person stopped. */
export async function chosenKeys(
  { schema, fields, first, how }: Keys,
  { set, ask }: Wanted,
): Promise<Readonly<Record<string, unknown>> | undefined> {
  const given = withSettings({}, set, ([key]) => fields.find((field) => field.key === key)?.usual);
  if (ask === undefined) return given;
  const questions = keyQuestions(schema, fields, first, how).filter(({ flag }) => !(keyOf(flag) in given));
  const answers = await askAll((known) => questions.find(({ flag }) => known[flag] === undefined), {}, ask);
  if (answers === undefined) return undefined;
  const own = questions.filter(({ flag, usual }) => answers[flag] !== usual);
  return { ...given, ...Object.fromEntries(own.map(({ flag }) => [keyOf(flag), readValue(answers[flag] ?? "")])) };
}

/** A question is answered by `--set key`. */
const keyOf = (flag: string) => flag.split(" ")[1] ?? flag;
