import * as z from "zod";

// What several documents hold. Lengths are mm, angles deg, forces N, unless `unit` beside the number says otherwise.

export const text = z.string();
export const texts = z.array(text);
export const number = z.number();
/** Infinity has no form in JSON and is written as null. */
export const endless = z.number().nullable();
export const numbers = z.record(text, number);
export const anything = z.unknown();

const level = z.enum(["error", "warning", "note"]);
const amount = z.strictObject({ value: endless, unit: text });

/** A complaint as the checks make it, without its place in a file. */
const complaint = {
  name: text.describe("the defect by its name; tramwright explain <name> tells of it"),
  level,
  path: z.array(z.union([text, number])).describe("keys that lead to what is meant, from the top of the preset"),
  says: text.describe("what is wrong, with its numbers"),
  found: amount.optional(),
  limit: amount.optional(),
  why: text.describe("what happens if nothing is done"),
  set: text.describe("what to set so that it passes"),
};

export const diagnostic = z.strictObject(complaint);

/** A complaint of an example, with the place in its text where it stands in one. */
export const exampleMessage = z.strictObject({
  ...complaint,
  file: text.optional(),
  place: z.strictObject({ line: number, column: number, width: number, text }).optional(),
});

export const message = z.strictObject({
  file: text.describe("the file, or the family that was named in its place"),
  line: z.int().min(1).optional(),
  column: z.int().min(1).optional().describe("in UTF-16 units, counted from 1"),
  ...complaint,
});

export const dimension = {
  key: text.describe("its name for explain, behind the family"),
  symbol: text,
  unit: text,
  meaning: text,
  source: text,
  value: endless,
  formula: text,
};

export const hardware = z.strictObject({ item: text, count: number, note: text.optional() });

const measure = z.strictObject({ what: text, expected: number, tolerance: number });

const piece = z.strictObject({
  file: text,
  title: text,
  count: z.int(),
  size: z.array(number).length(3).describe("on the bed, mm"),
  volume: number.describe("mm3"),
  mass: number.describe("g, an estimate"),
  facets: z.int(),
  thinnestWall: number.optional(),
  widestBridge: number,
  measures: z.array(measure),
});

export const part = z.strictObject({
  name: text,
  family: text,
  hash: text.describe("stands for all that the part is made from"),
  material: text,
  written: texts.describe("files, from the working folder; none in a dry run"),
  pieces: z.array(piece),
  dimensions: z.array(z.strictObject(dimension)),
  hardware: z.array(hardware),
  limits: texts,
  cautions: texts,
});

const limit = z.strictObject({ kind: text, value: number });

export const fact = {
  key: text.describe("its name for explain"),
  label: text,
  value: endless,
  unit: text,
  limit: limit.optional(),
  from: z
    .strictObject({
      calculation: text.describe("for tramwright explain, and docs/calculations.md"),
      result: text,
      inputs: z.record(text, endless),
    })
    .optional(),
  margin: endless.optional().describe("as a share of the limit; below nought where it is overstepped"),
};

const load = z.strictObject({
  name: text,
  weight: number.describe("N, of all that the screws carry together"),
  leaned: z.boolean(),
  shares: numbers,
  least: numbers,
});

const placement = z.strictObject({
  origin: z.array(number).length(3),
  angle: number,
  upright: z.literal(true).optional(),
});

/** The numbers of a machine. */
export const machine = {
  madeBy: text,
  stage: text,
  sections: z.array(z.strictObject({ title: text, facts: z.array(z.strictObject(fact)), lines: texts })),
  loops: z.array(
    z.strictObject({
      loop: text,
      nominal: number,
      bought: number.nullable(),
      nodes: texts.describe("as the belt runs"),
    }),
  ),
  loads: z
    .strictObject({ weight: number, cases: z.array(load), worst: numbers, crash: number.optional() })
    .nullable()
    .describe("of the screws; null where it is not known what they carry"),
};

export const listedPart = z.strictObject({
  name: text,
  family: text,
  hash: text,
  of: text.describe("the part of the plan it is, or belongs to"),
  placement,
  moves: z.boolean().describe("whether it goes up and down with the stage"),
});

const field = {
  key: text,
  symbol: text,
  unit: text,
  description: text,
  range: text.optional(),
  words: z.record(text, text).optional(),
  table: text.optional(),
  family: text.optional(),
  derived: z.boolean(),
  list: z.boolean(),
  how: text.optional(),
};

/** A parameter, its default under one of two names. */
export const parameter = {
  ...field,
  entry: z.array(z.strictObject({ ...field, entry: z.array(anything), usual: anything.optional() })),
};

export const parameters = z.array(z.strictObject({ ...parameter, default: anything.optional() }));
