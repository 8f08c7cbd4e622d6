import { metaOf } from "../../core/parameter.ts";
import { stageFileSchema } from "../../presets/stage-preset.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";
import { bare, type ParameterField, parameterFields, type Schema } from "./parameter-field.ts";
import { parameterLines } from "./parameter-lines.ts";

export const STAGE = "stage";

/** One block of a plan: a key at its top, with the keys below it where it has any of its own. */
export interface Block {
  readonly key: string;
  readonly meaning: string;
  /** Whether things stand below it by their names, or in a list. */
  readonly many: "one" | "named" | "list";
  readonly fields: readonly ParameterField[];
}

const MANY = { one: "", named: "each under its name", list: "a list" } as const;

/** Returns the page that tells what the plan of a stage holds. */
export function stagePage(): Page {
  const all = planBlocks();
  const lone = all.filter(({ fields }) => fields.length === 0).map(({ key }) => key);
  const fields = parameterFields(stageFileSchema, {}).filter(({ key }) => lone.includes(key));
  return {
    name: STAGE,
    title: `${STAGE}: the plan of a whole machine`,
    lines: [
      ...hanging("", "A file of your own with what was measured and chosen; everything else is derived from it."),
      "    format: 1",
      "    stage: <its name, which names the folder of its files>",
      ...hanging("", "Bare lengths are in mm, or in inches after units: in. Examples: presets/stages."),
      "",
      ...parameterLines(fields),
      ...all
        .filter((block) => block.fields.length > 0)
        .flatMap(({ key, meaning, many, fields: inside }) => [
          "",
          ...hanging(`${key}: `, [meaning, MANY[many]].filter((words) => words !== "").join(", ")),
          ...parameterLines(inside),
        ]),
    ],
    data: { kind: STAGE, blocks: all.map((block) => ({ ...block, fields: block.fields.map(withoutUsual) })), fields },
  };
}

const withoutUsual = ({ usual, ...field }: ParameterField) => ({ ...field, default: usual ?? null });

/** Returns the blocks of a plan in the order in which its schema names them. */
export const planBlocks = (): Block[] => blocks(stageFileSchema as unknown as Schema);

function blocks(schema: Schema, prefix = ""): Block[] {
  return Object.entries(schema.shape ?? {}).flatMap(([key, one]) => {
    const own = inner(one);
    const name = `${prefix}${key}`;
    const meaning = metaOf(one as never).description;
    if (own.schema.shape === undefined)
      return prefix === "" ? [{ key: name, meaning, many: own.many, fields: [] }] : [];
    const fields = parameterFields(own.schema, usualOf(own.schema));
    return [{ key: name, meaning, many: own.many, fields }, ...blocks(own.schema, `${name}.`)];
  });
}

/** Returns the schema of one thing, where several stand under their names or in a list. */
function inner(schema: Schema): { readonly schema: Schema; readonly many: Block["many"] } {
  const own = bare(schema);
  if (own.element !== undefined) return { schema: bare(own.element), many: "list" };
  return own.valueType === undefined ? { schema: own, many: "one" } : { schema: bare(own.valueType), many: "named" };
}

/** Returns the defaults of the keys that have one. */
function usualOf({ shape = {} }: Schema): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(shape).flatMap(([key, one]) => {
      const parsed = (one as { safeParse: (value: unknown) => { success: boolean; data?: unknown } }).safeParse(
        undefined,
      );
      return parsed.success && parsed.data !== undefined ? [[key, parsed.data]] : [];
    }),
  );
}
