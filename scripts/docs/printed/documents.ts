import * as z from "zod";
import { explained } from "./explained.ts";
import { SETTINGS } from "./settings.ts";
import {
  anything,
  dimension,
  hardware,
  listedPart,
  machine,
  message,
  number,
  parameters,
  part,
  text,
  texts,
} from "./shapes.ts";

const made = z.union([
  z.strictObject({ parts: z.array(part), messages: z.array(message) }),
  z.strictObject({
    stages: z.array(
      z.strictObject({
        file: text,
        ...Object.fromEntries(Object.entries(machine).map(([key, shape]) => [key, shape.optional()])),
        folder: text,
        written: texts,
        reprint: z
          .strictObject({ names: texts, hours: number, same: number })
          .optional()
          .describe("what to print again of a machine that was made before with other numbers"),
        removed: texts,
        changed: texts
          .optional()
          .describe("files of the set before that somebody had changed, by the names under which they stay"),
        alike: z
          .array(texts)
          .optional()
          .describe("parts that are the same bodies, each group by its names: any of them serves for the others"),
        parts: z.array(
          z.union([
            part,
            z.looseObject({ name: text, family: text, material: text, hash: text, kept: z.literal(true) }),
          ]),
        ),
        messages: z.array(anything).optional(),
      }),
    ),
    messages: z.array(message),
  }),
]);

const compared = z.strictObject({
  parts: z.array(
    z.strictObject({
      name: text,
      action: text,
      shim: number.optional().describe("height of the ring to lay under the bearing, mm"),
      hours: number.describe("to print it, an estimate; 0 for what stays"),
      why: text,
      oldHash: text.nullable(),
      newHash: text.nullable(),
    }),
  ),
  buy: z
    .array(z.strictObject({ item: text, more: number.describe("below nought: so many are over") }))
    .nullable()
    .describe("null where an error in a plan leaves it uncertain"),
  notCompared: z
    .array(text)
    .optional()
    .describe("only where buy is null: parts that an error may have left out of one of the machines"),
});

const trammed = z.strictObject({
  plane: z.strictObject({
    centre: z.strictObject({ x: number, y: number }),
    atCentre: number,
    slopeX: number,
    slopeY: number,
    worst: number,
  }),
  moves: z.array(
    z.strictObject({
      mount: text,
      move: number.describe("mm, up"),
      clockwise: number.describe("turns, as seen from `seenFrom`"),
      seenFrom: z.enum(["below", "above"]),
      turned: text,
      marks: number,
      spring: number,
      measured: z.boolean(),
      left: z.strictObject({ up: number, down: number }).describe("what is left of the travel, mm"),
    }),
  ),
  twist: z.strictObject({ worst: number, off: z.array(number) }).nullable(),
});

const families = z.array(z.strictObject({ name: text, title: text, purpose: text }));

const family = z.strictObject({
  name: text,
  title: text,
  purpose: text,
  orientation: text,
  sketch: text,
  parameters,
  dimensions: z.array(z.strictObject(dimension)),
  checks: z.array(z.strictObject({ name: text, why: text, trips: z.record(text, anything) })),
  hardware: z.array(hardware),
  companions: z.array(z.looseObject({ family: text, count: number })),
  limits: texts,
});

const plan = z.strictObject({
  kind: z.literal("stage"),
  blocks: z.array(z.strictObject({ key: text, meaning: text, many: text.optional(), fields: parameters })),
  fields: parameters,
});

const row = {
  key: text,
  values: z.record(text, z.union([number, text])),
  source: text,
  standing: z.enum(["standard", "published", "typical"]),
  from: z.enum(["seen", "memory"]),
  note: text.optional(),
  differs: z
    .array(z.strictObject({ field: text, others: z.array(z.union([number, text])), by: text, settled: text }))
    .optional(),
};

const table = z.strictObject({
  name: text,
  title: text,
  item: text,
  fields: z.record(text, z.strictObject({ symbol: text, unit: text, meaning: text, source: text.optional() })),
  rows: number,
});

const written = z.strictObject({ file: text, subject: text, name: text, notes: texts });

const rebuilt = z.strictObject({
  parts: z.array(
    z.strictObject({
      file: text,
      equal: z.boolean().describe("whether everything that is there is as it was made now"),
      madeBy: text,
      thisIs: text,
      hash: z.strictObject({ carried: text.optional(), made: text.optional() }),
      files: z.array(z.strictObject({ name: text, state: text, differs: texts })),
      written: texts,
      measure: z
        .array(z.strictObject({ what: text, takes: text, how: text }))
        .describe("what to measure before printing"),
      messages: z.array(message),
    }),
  ),
});

/** What `--json` of each command prints, and a line of `--messages json`. */
export const DOCUMENTS: Readonly<Record<string, { readonly title: string; readonly shape: z.ZodType }>> = {
  make: { title: "What tramwright make --json and check --json print", shape: made },
  report: {
    title: "What tramwright report --json prints",
    shape: z.strictObject({
      ...Object.fromEntries(Object.entries(machine).map(([key, shape]) => [key, shape.optional()])),
      parts: z.array(listedPart).optional(),
      messages: z.array(message),
    }),
  },
  compare: { title: "What tramwright compare --json prints", shape: compared },
  tram: { title: "What tramwright tram --json prints", shape: trammed },
  parts: { title: "What tramwright parts --json prints", shape: z.union([families, family, SETTINGS, plan]) },
  explain: { title: "What tramwright explain --json prints", shape: z.array(explained) },
  stock: {
    title: "What tramwright stock --json prints",
    shape: z.union([z.array(table), z.array(z.strictObject(row)), z.strictObject({ table: text, ...row })]),
  },
  new: { title: "What tramwright new --json prints", shape: written },
  rebuild: { title: "What tramwright rebuild --json prints", shape: rebuilt },
  message: { title: "One line of --messages json", shape: message },
};
