import fc from "fast-check";
import type { JsonSchema } from "../../src/presets/schema/json-schema.ts";

/** Texts that stand for a quantity, by the definition that reads them; some of them are of the wrong kind or none. */
const TEXTS: Readonly<Record<string, readonly string[]>> = {
  length: [
    "12 mm",
    "3/4 in",
    "1 1/2 in",
    "1-1/4 in",
    "0.5 ft",
    "1' 3 1/2\"",
    "7",
    " 25.4mm ",
    "2 cm",
    ".5 in",
    "1e1 mm",
  ],
  angle: ["45 deg", "30°", "0.5 rad", "12"],
  force: ["40 N", "12 lbf", "0.02 kN", "5"],
  rate: ["5 N/mm", "20 lbf/in", "800 N/m"],
  torque: ["0.5 N·m", "0.5 N m", "500 Nmm", "4 lbf in", "0.6"],
  temperature: ["60 °C", "140 F", "333 K", "25"],
  mass: ["2 kg", "400 g", "3 lb", "1/2 lb"],
  power: ["200 W", "0.2 kW"],
};
const WRONG_TEXTS = [
  "",
  "much",
  "12 mmm",
  "1,5 mm",
  "2 N/mm/mm",
  "3/0 in",
  "1 1/2/3 in",
  "12 MM",
  "0x10",
  "ten mm",
  "5 furlong",
  "1' 3' 2\"",
];
const ALL_TEXTS = [...Object.values(TEXTS).flat(), ...WRONG_TEXTS];
const NAMES = ["A", "B", "C", "front", "back", "left-1", "motor", "low"];
const WORDS = ["bench", "a-1", "A bench", "", "ein Bügel", "x".repeat(70), "-", "M5", "one reason in words"];

/** Anything that no key takes, or only some do. */
const STRANGE = fc.oneof(
  fc.constantFrom<unknown>(null, true, false, "", "yes", [], {}, [1, 2], [[]], { row: "608" }, { row: "no such" }),
  fc.constantFrom<unknown>(0, -1, 1, 2.5, 1e9, -1e9, Number.NaN, Number.POSITIVE_INFINITY, 3, 608),
  fc.constantFrom(...ALL_TEXTS, ...WORDS),
);

type Definitions = Readonly<Record<string, JsonSchema>>;

/** Returns presets that fit a JSON Schema, and such as were changed in one to three places. */
export function randomPresets(schema: JsonSchema): fc.Arbitrary<unknown> {
  const right = fitting(schema, (schema.definitions ?? {}) as Definitions);
  const changed = fc.tuple(right, fc.array(change, { minLength: 1, maxLength: 3 }));
  return fc.oneof(
    { weight: 2, arbitrary: right },
    { weight: 3, arbitrary: changed.map(([one, all]) => after(one, all)) },
  );
}

function fitting(schema: JsonSchema, definitions: Definitions): fc.Arbitrary<unknown> {
  const { const: only, enum: words, oneOf, anyOf, allOf, type, $ref } = schema as Record<string, unknown>;
  const inner = (one: unknown) => fitting(one as JsonSchema, definitions);
  if (only !== undefined) return fc.constant(only);
  if (words !== undefined) return fc.constantFrom(...(words as unknown[]));
  if (oneOf !== undefined) return fc.oneof(...(oneOf as unknown[]).map(inner));
  const definition =
    String($ref ?? (allOf as JsonSchema[] | undefined)?.[0]?.$ref ?? "")
      .split("/")
      .at(-1) ?? "";
  if (definition in TEXTS) return quantity(schema, TEXTS[definition] ?? []);
  if (definition !== "") return inner(definitions[definition]);
  if (anyOf !== undefined && schema.properties === undefined) return fc.oneof(...(anyOf as unknown[]).map(inner));
  if (type === "object") return map(schema, definitions);
  if (type === "array") return list(schema, inner);
  if (type === "boolean") return fc.boolean();
  if (type === "integer" || type === "number") return number(schema);
  if (Array.isArray(type)) return fc.constantFrom<unknown>(1, 2.5, 8, "3");
  if (schema.pattern !== undefined) return matching(String(schema.pattern));
  const long = Number(schema.minLength ?? 0);
  return fc.constantFrom(...[...NAMES, ...WORDS].filter(({ length }) => length >= long));
}

const matched = new Map<string, fc.Arbitrary<string>>();

/** To make texts of a long expression takes long to prepare: each is kept. */
function matching(pattern: string): fc.Arbitrary<string> {
  const known = matched.get(pattern) ?? fc.stringMatching(new RegExp(pattern), { size: "xsmall" });
  matched.set(pattern, known);
  return known;
}

function quantity(schema: JsonSchema, texts: readonly string[]): fc.Arbitrary<unknown> {
  return fc.oneof({ weight: 30, arbitrary: number(schema) }, { weight: 1, arbitrary: fc.constantFrom(...texts) });
}

function number({ minimum, maximum, type }: JsonSchema): fc.Arbitrary<number> {
  const [min, max] = [Number(minimum ?? 1), Number(maximum ?? 30)];
  const whole = fc.integer({ min: Math.ceil(min), max: Math.max(Math.ceil(min), Math.floor(max)) });
  const ends = fc.constantFrom(min, max);
  return type === "integer" ? whole : fc.oneof(whole, ends, fc.double({ min, max, noNaN: true }));
}

function map(schema: JsonSchema, definitions: Definitions): fc.Arbitrary<unknown> {
  const { properties = {}, required = [], additionalProperties, minProperties } = schema as Record<string, unknown>;
  const own = Object.entries(properties as Record<string, JsonSchema>);
  if (own.length === 0 && typeof additionalProperties === "object" && additionalProperties !== null) {
    const each = fitting(additionalProperties as JsonSchema, definitions);
    return fc.dictionary(fc.constantFrom(...NAMES), each, { minKeys: Number(minProperties ?? 0), maxKeys: 3 });
  }
  // A bought item names its row, unless it states everything.
  const keys = new Set(schema.anyOf === undefined ? (required as string[]) : ["row"]);
  // A map with fifty keys of which each may be wrong is hardly ever right: a few of them do.
  const few = fc.subarray(
    own.map(([key]) => key).filter((key) => !keys.has(key)),
    { maxLength: Math.min(6, own.length - keys.size) },
  );
  return few.chain((chosen) =>
    fc.record(
      Object.fromEntries(
        own
          .filter(([key]) => keys.has(key) || chosen.includes(key))
          .map(([key, one]) => [key, fitting(one, definitions)]),
      ),
    ),
  );
}

function list(schema: JsonSchema, inner: (one: unknown) => fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const { items, minItems = 0, maxItems = 4 } = schema as Record<string, unknown>;
  if (Array.isArray(items)) return fc.tuple(...items.map(inner));
  return fc.array(inner(items), { minLength: Number(minItems), maxLength: Math.min(4, Number(maxItems)) });
}

interface Change {
  readonly at: number;
  readonly how: "leave out" | "misspell" | "replace" | "scale" | "add" | "repeat";
  readonly value: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(),
  how: fc.constantFrom("leave out", "misspell", "replace", "replace", "scale", "add", "repeat"),
  value: STRANGE,
});

type Holder = Record<PropertyKey, unknown>;

function after(preset: unknown, changes: readonly Change[]): unknown {
  const copy = structuredClone(preset);
  for (const one of changes) apply(copy, one);
  return copy;
}

function apply(preset: unknown, { at, how, value }: Change): void {
  const places = placesIn(preset);
  const place = places[at % Math.max(1, places.length)];
  if (place === undefined) return;
  const { holder, key } = place;
  const old = holder[key];
  if (how === "replace") holder[key] = value;
  else if (how === "scale" && typeof old === "number") holder[key] = old * 1000 - 1;
  else if (how === "repeat" && Array.isArray(old)) holder[key] = [...old, ...old, ...old, value];
  else if (how === "add" && !Array.isArray(holder)) holder.colour = value;
  else if (Array.isArray(holder)) holder.pop();
  else {
    delete holder[key];
    if (how === "misspell") holder[`${String(key).slice(1)}x`] = old;
  }
}

function placesIn(value: unknown): { readonly holder: Holder; readonly key: PropertyKey }[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Holder;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...placesIn(holder[key])]);
}
