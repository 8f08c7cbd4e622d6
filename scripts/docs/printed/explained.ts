import * as z from "zod";
import { SETTINGS } from "./settings.ts";
import {
  anything,
  diagnostic,
  dimension,
  endless,
  exampleMessage,
  fact,
  number,
  numbers,
  parameter,
  text,
  texts,
} from "./shapes.ts";

const quantity = z.strictObject({ symbol: text, unit: text, meaning: text });
const quantities = z.record(text, z.looseObject(quantity.shape));

/** What `explain` tells of: the kind says which. */
export const explained = z.union([
  z.strictObject({
    kind: z.literal("number"),
    family: text,
    ...dimension,
    inputs: z.array(
      z.strictObject({ symbol: text, value: endless, unit: text, meaning: text, from: text, source: text.optional() }),
    ),
  }),
  z.strictObject({
    kind: z.literal("parameter"),
    ...parameter,
    family: text,
    usual: anything.optional(),
    numbers: texts,
    checks: texts,
  }),
  z.strictObject({ kind: z.literal("printer setting"), ...parameter, usual: anything.optional(), numbers: texts }),
  z.strictObject({
    kind: z.literal("check"),
    family: text,
    name: text,
    path: z.array(z.union([text, number])),
    why: text,
    neverAccepted: z.boolean(),
    examples: z.array(
      z.strictObject({ level: text, parameters: z.record(text, anything), message: diagnostic.nullable().optional() }),
    ),
  }),
  z.strictObject({
    kind: z.literal("defect"),
    name: text,
    what: text,
    why: text,
    set: text,
    excusable: z.boolean(),
    more: text.optional(),
    examples: z.array(
      z.strictObject({
        level: text,
        from: text.describe("where the example is from"),
        lines: texts,
        message: z
          .union([text, exampleMessage])
          .nullable()
          .describe("what is told, the sentence alone where it is built"),
        brings: texts.describe("what else is told"),
      }),
    ),
  }),
  z.strictObject({
    kind: z.literal("refusal"),
    name: text,
    what: text,
    why: text,
    set: text,
    example: z.strictObject({ of: text, given: text, message: z.looseObject({}).nullable() }),
  }),
  z.strictObject({
    kind: z.literal("calculation"),
    name: text,
    title: text,
    inputs: quantities,
    results: quantities,
    formulas: z.record(text, text),
    valid: text,
    source: text,
    examples: z.array(
      z.looseObject({ given: numbers, gives: z.record(text, endless), source: text }).describe("worked examples"),
    ),
  }),
  z.strictObject({
    kind: z.literal("search"),
    name: text,
    title: text,
    takes: anything,
    gives: anything,
    how: anything,
    valid: text,
    source: text,
  }),
  z.strictObject({
    kind: z.literal("source"),
    key: text,
    sourceKind: text,
    title: text,
    citedBy: z.strictObject({ calculations: texts, examples: texts, numbers: texts, tables: texts }),
  }),
  z.strictObject({ kind: z.literal("fact"), section: text, ...fact, margin: endless, source: text.nullable() }),
  z.strictObject({ kind: z.enum(["family", "table", "row"]), name: text, title: text, command: text }),
  SETTINGS,
]);
