import { allowedWords, type ParameterField, parameterFields } from "../../src/cli/explain/parameter-field.ts";
import { usualWords } from "../../src/cli/explain/parameter-lines.ts";
import { familyFields, printerFields } from "../../src/cli/explain/parameter-page.ts";
import { type Block, planBlocks } from "../../src/cli/explain/stage-page.ts";
import type { AnyFamily } from "../../src/parts/family.ts";
import { GUIDES, ITEM_GUIDES } from "../../src/parts/guides.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { partFileSchema } from "../../src/presets/part-preset.ts";
import { printerFileSchema } from "../../src/presets/printer-preset.ts";
import { stageFileSchema } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { PLAN_MEASURES } from "../../src/stage/plan-measures.ts";
import { NOTICE, table } from "./markdown.ts";

const MANY = { one: "", named: ", each under its name", list: ", a list" } as const;
const HEADS = ["key", "symbol", "unit", "default", "allowed", "meaning, and how to measure it"];

/** Returns the page of every kind of preset: each key with symbol, unit, default, range, meaning and how it is measured. */
export function presetsPage(): string {
  return [
    "# Presets",
    "",
    NOTICE,
    "",
    "A preset is a YAML file of one of three kinds: a part, the plan of a whole stage, or the settings of a printer. Bare",
    "lengths are mm, angles degrees; a quantity may be typed with another unit (`1 1/4 in`, `3 lbf in`). `tramwright new",
    "<kind>` writes one with comments, `tramwright schema <kind>` the schema that an editor checks it with.",
    "",
    "## A part",
    "",
    ...outer(partFileSchema),
    ...FAMILIES.flatMap(familyLines),
    "",
    "## The plan of a stage",
    "",
    "Bare lengths are inches after `units: in`.",
    "",
    ...outer(stageFileSchema),
    ...planBlocks()
      .filter(({ fields }) => fields.length > 0)
      .flatMap(blockLines),
    "",
    "## A printer",
    "",
    ...outer(printerFileSchema),
    "",
    "### settings",
    "",
    "`tramwright explain printer` draws the test piece that these are measured on.",
    "",
    ...rows(printerFields(), {}),
    "",
  ].join("\n");
}

/** The keys at the top of a file. */
function outer(schema: { readonly shape: Readonly<Record<string, unknown>> }): string[] {
  const keys = parameterFields(schema, {}).map(({ key, description }) => [code(key), description]);
  return table(["key at the top", "meaning"], keys);
}

function familyLines(family: AnyFamily): string[] {
  const design = family.design(family.schema.parse({}), UNCALIBRATED);
  const { measure = {} } = GUIDES[family.name] ?? {};
  return [
    "",
    `### parameters: of a ${family.name}`,
    "",
    family.purpose,
    "",
    ...rows(familyFields(family, design), measure),
  ];
}

function blockLines({ key, meaning, many, fields }: Block): string[] {
  const how = Object.hasOwn(PLAN_MEASURES, key) ? PLAN_MEASURES[key as keyof typeof PLAN_MEASURES] : undefined;
  const measured = how === undefined ? [] : [`Measured: ${how}.`, ""];
  return [
    "",
    `### ${key}:`,
    "",
    `${meaning === "" ? key : meaning}${MANY[many]}.`,
    "",
    ...measured,
    ...rows(fields, {}),
  ];
}

function rows(fields: readonly ParameterField[], measure: Readonly<Record<string, string | undefined>>): string[] {
  return table(
    HEADS,
    fields.flatMap((field) => [row(field, measure), ...field.entry.map((one) => row(one, {}, field))]),
  );
}

function row(
  field: ParameterField,
  measure: Readonly<Record<string, string | undefined>>,
  of?: ParameterField,
): string[] {
  const { key, symbol, unit, description, words = {}, table: item, how = measure[key] } = field;
  const meanings = Object.entries(words).filter(
    ([word, meaning]) => word !== meaning && !["yes", "no"].includes(meaning),
  );
  const measured = how ?? (item === undefined ? undefined : ITEM_GUIDES[item]);
  return [
    of === undefined ? code(key) : `${code(of.key)}, each: ${code(key)}`,
    symbol === key ? "" : symbol,
    unit,
    of === undefined ? usualWords(field) : "",
    allowedWords(field),
    [
      description,
      ...meanings.map(([word, meaning]) => `${code(word)}: ${meaning}`),
      ...(measured === undefined ? [] : [`measured: ${measured}`]),
    ].join("; "),
  ];
}

const code = (words: string) => `\`${words}\``;
