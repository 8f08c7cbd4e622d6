import { complaintsOf } from "../../parts/complaints.ts";
import { readValue } from "../../presets/read.ts";
import type { ParameterField } from "../explain/parameter-field.ts";
import { presetValue } from "../explain/preset-value.ts";
import type { Checked } from "./answers.ts";
import type { Question } from "./question.ts";

type AnySchema = Parameters<typeof complaintsOf>[1]["schema"] & { readonly shape: Readonly<Record<string, AnySchema>> };

/** Returns a question for each of the keys that a default stands for; `--set key=value` answers it as well. */
export function keyQuestions(
  schema: unknown,
  fields: readonly ParameterField[],
  first: readonly string[],
  how: Readonly<Partial<Record<string, string>>>,
): Question[] {
  const { shape } = schema as AnySchema;
  return first.flatMap((key) => {
    const field = fields.find((one) => one.key === key);
    const own = shape[key];
    return field === undefined || own === undefined || field.usual === undefined || field.list
      ? []
      : [question(field, own, how[key])];
  });
}

function question(field: ParameterField, schema: AnySchema, hint: string | undefined): Question {
  const { key, description, unit, range, table, words, usual } = field;
  const rows = table === undefined ? "" : `a row of tramwright stock ${table}`;
  const allowed = range === undefined ? rows : `${range} ${unit}`.trim();
  return {
    flag: `set ${key}`,
    asks: `${key}: ${description}${allowed === "" ? "" : `, ${allowed}`}`,
    usual: presetValue(usual).replace(/^"(.*)"$/, "$1"),
    ...(hint === undefined ? {} : { hint }),
    ...(words === undefined ? {} : { words }),
    check: (text) => checked(schema, text),
  };
}

function checked(schema: AnySchema, text: string): Checked<unknown> {
  const data = readValue(text);
  const parsed = schema.safeParse(data);
  if (parsed.success) return { value: data };
  const [first] = complaintsOf(parsed.error, { schema, data, under: [] });
  return {
    wrong: first === undefined ? "it does not fit" : `${first.says.replace(/^the file(: | is )/, "")}; ${first.set}`,
  };
}
