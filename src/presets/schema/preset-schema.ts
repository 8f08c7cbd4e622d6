import * as z from "zod";
import { meaning } from "../../core/parameter.ts";
import { FAMILIES } from "../../parts/index.ts";
import { printerSchema } from "../../printing/printer.ts";
import { partFileSchema, partPrinter } from "../part-preset.ts";
import { printerFileSchema } from "../printer-preset.ts";
import { stageFileSchema } from "../stage-preset.ts";
import { type JsonSchema, jsonSchemaOf } from "./json-schema.ts";
import { withInches } from "./with-inches.ts";

/** What a preset may be of: the families, a stage, a printer. */
export const SUBJECTS: readonly string[] = [...FAMILIES.map(({ name }) => name), "stage", "printer"];

/** Returns the JSON Schema, draft-07, of the presets of a family, of a stage or of a printer; undefined for others. */
export function presetSchema(subject: string): JsonSchema | undefined {
  if (subject === "stage") return withInches(jsonSchemaOf(stageFileSchema, titled("plan of a whole stage")));
  if (subject === "printer") {
    const settings = described(printerSchema, printerFileSchema.shape.settings);
    return jsonSchemaOf(printerFileSchema.extend({ settings }), titled("settings of a printer"));
  }
  const family = FAMILIES.find(({ name }) => name === subject);
  if (family === undefined) return undefined;
  const { part, parameters } = partFileSchema.shape;
  const printer = meaning(z.union([z.string(), printerSchema]), PRINTER.description ?? "").optional();
  const own = partFileSchema.extend({
    part: described(z.literal(family.name), part),
    printer,
    parameters: described(family.schema, parameters).default({} as never),
  });
  return jsonSchemaOf(own, titled(`${family.title}: ${family.purpose}`));
}

const PRINTER = z.globalRegistry.get(partPrinter) ?? {};

const titled = (what: string) => `tramwright preset, ${what}`;

/** Returns a copy of a schema that says of itself what the outer one says in its place. */
function described<Schema extends z.ZodType>(schema: Schema, outer: z.ZodType): Schema {
  const { description = "" } = z.globalRegistry.get(outer.meta() === undefined ? inner(outer) : outer) ?? {};
  return meaning(schema.clone() as Schema, description);
}

const inner = (schema: z.ZodType) => (schema instanceof z.ZodDefault ? (schema.unwrap() as z.ZodType) : schema);
