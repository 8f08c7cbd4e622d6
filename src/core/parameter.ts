import * as z from "zod";
import { complain, LIMITS, type ParameterMeta, presented } from "./complain.ts";
import { nearest } from "./nearest.ts";
import { NUMBER, TEXT } from "./plain-schemas.ts";
import { INSIDE, type Kind, readQuantity } from "./quantity.ts";

export { type ComplaintParams, LIMITS, type Limits, type ParameterMeta, presented } from "./complain.ts";
export { hardware, TABLE_OF } from "./hardware.ts";

// A schema reads a handful of files in one run: compiling its reader first costs more than it saves.
z.config({ jitless: true });

interface Spec {
  readonly symbol: string;
  readonly meaning: string;
  readonly min: number;
  readonly max: number;
}

const BEYOND = "outside this range the rules behind the part, or the print, do not hold";

function quantity(kind: Kind, spec: Spec) {
  const unit = INSIDE[kind];
  const range = `${spec.min} to ${spec.max}`;
  return z
    .union([NUMBER, TEXT], `expected a ${kind} from ${range} ${unit}, a number or text with a unit`)
    .transform((typed, ctx): number => {
      const reading = typeof typed === "number" ? { value: typed } : readQuantity(typed, kind);
      if ("wrong" in reading) {
        return complain(ctx, reading.wrong, {
          set: reading.anything ? `a ${kind} from ${range} ${unit}` : reading.set,
        });
      }
      const { value } = reading;
      if (value < spec.min || value > spec.max || !Number.isFinite(value)) {
        const limit = value < spec.min ? spec.min : spec.max;
        const read = `${Number(value.toPrecision(6))} ${unit}`;
        const meant = typeof typed === "number" || typed.trim() === read ? "" : ` (${read})`;
        const says = `${spec.meaning} is ${typed}${meant}, outside ${range} ${unit}`;
        return complain(ctx, says, { set: `a value from ${range} ${unit}`, found: value, limit, unit, why: BEYOND });
      }
      return value;
    })
    .register(LIMITS, { kind, min: spec.min, max: spec.max })
    .register(z.globalRegistry, {
      symbol: spec.symbol,
      unit,
      description: spec.meaning,
      range,
    } satisfies ParameterMeta);
}

export const length = (spec: Spec) => quantity("length", spec);
export const angle = (spec: Spec) => quantity("angle", spec);
export const force = (spec: Spec) => quantity("force", spec);
export const rate = (spec: Spec) => quantity("rate", spec);
export const torque = (spec: Spec) => quantity("torque", spec);
export const temperature = (spec: Spec) => quantity("temperature", spec);
export const mass = (spec: Spec) => quantity("mass", spec);
export const power = (spec: Spec) => quantity("power", spec);
export const voltage = (spec: Spec) => quantity("voltage", spec);

/** What a number with a unit behind it is to be without: `, without a unit: 24`; "" for what is none. */
function withoutUnit(input: unknown): string {
  const [, amount] = (typeof input === "string" && /^\s*([+-]?\d+(?:\.\d+)?)\s*[a-zµ°%·/]+\s*$/i.exec(input)) || [];
  return amount === undefined ? "" : `, without a unit: ${amount}`;
}

/** A whole number, or any number without a unit when `whole` is false. */
export function plainNumber(spec: Spec & { readonly whole?: boolean }) {
  const range = `${spec.min} to ${spec.max}`;
  return z
    .number({ error: ({ input }) => `expected a number from ${range}${withoutUnit(input)}` })
    .transform((value, ctx): number => {
      const whole = spec.whole ?? true;
      if (value < spec.min || value > spec.max || (whole && !Number.isInteger(value))) {
        const kind = whole ? "a whole number" : "a number";
        const says = `${spec.meaning} is ${value}, not ${kind} from ${range}`;
        const beyond = value < spec.min ? { limit: spec.min } : value > spec.max ? { limit: spec.max } : {};
        return complain(ctx, says, { set: `${kind} from ${range}`, found: value, ...beyond, why: BEYOND });
      }
      return value;
    })
    .register(LIMITS, { min: spec.min, max: spec.max, whole: spec.whole ?? true })
    .register(z.globalRegistry, {
      symbol: spec.symbol,
      unit: "",
      description: spec.meaning,
      range,
    } satisfies ParameterMeta);
}

/** One of a few words, each with its meaning. */
export function choice<const Word extends string>(
  symbol: string,
  meaning: string,
  words: Readonly<Record<Word, string>>,
) {
  const known = Object.keys(words) as Word[];
  return z
    .union([TEXT, NUMBER], `expected one of ${known.join(", ")}`)
    .transform((typed, ctx): Word => {
      const word = String(typed).trim();
      if ((known as string[]).includes(word)) return word as Word;
      const close = nearest(word, known);
      return complain(ctx, `${word} is not known here`, { set: close ?? `one of ${known.join(", ")}` });
    })
    .register(z.globalRegistry, { symbol, unit: "", description: meaning, words } satisfies ParameterMeta);
}

export function flag(symbol: string, meaning: string) {
  return z.boolean("expected true or false").register(z.globalRegistry, {
    symbol,
    unit: "",
    description: meaning,
    words: { true: "yes", false: "no" },
  } satisfies ParameterMeta);
}

/** A short text that may be engraved: letters, digits, blank and . - + only. */
export function label(symbol: string, meaning: string, longest = 16) {
  const letters = new RegExp(`^[A-Za-z0-9 .+-]{0,${longest}}$`);
  return z
    .string("expected a short text in quotation marks")
    .transform((text, ctx): string => {
      if (letters.test(text)) return text;
      return complain(ctx, `${presented(text)} cannot be engraved`, {
        set: `at most ${longest} of the letters A to Z, digits, blank, . - +`,
      });
    })
    .register(LIMITS, { pattern: letters.source })
    .register(z.globalRegistry, { symbol, unit: "", description: meaning } satisfies ParameterMeta);
}

/** Returns the schema with what its value means, for schemas that are made of others. */
export function meaning<Schema extends z.ZodType>(schema: Schema, description: string): Schema {
  z.globalRegistry.add(schema, { symbol: "", unit: "", description } satisfies ParameterMeta);
  return schema;
}

/** Returns what a parameter says about itself, through defaults and optionals. */
export function metaOf(schema: z.ZodType): ParameterMeta {
  const meta = schema.meta() as ParameterMeta | undefined;
  if (meta?.description !== undefined) return meta;
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault || schema instanceof z.ZodOptional) {
    return metaOf(schema.unwrap() as z.ZodType);
  }
  return { symbol: "", unit: "", description: "" };
}
