import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { Ajv } from "ajv";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Kind, readQuantity, unitsOf } from "../../src/core/quantity.ts";
import { quantityPattern } from "../../src/core/quantity-pattern.ts";
import { parseParameters, readPartPreset } from "../../src/presets/part-preset.ts";
import { readPrinterPreset, readSettings } from "../../src/presets/printer-preset.ts";
import { readYaml, type YamlFile } from "../../src/presets/read.ts";
import { type JsonSchema, jsonSchemaOf } from "../../src/presets/schema/json-schema.ts";
import { presetSchema, SUBJECTS } from "../../src/presets/schema/preset-schema.ts";
import { readStagePreset, stageFileSchema } from "../../src/presets/stage-preset.ts";
import { randomPresets } from "../support/random-presets.ts";
import { runs } from "../support/thorough.ts";

/** Nothing of a schema may be unknown or half said; only `number or text` is not forbidden. */
const ajv = new Ajv({ strict: true, allowUnionTypes: true });
const schemas = Object.fromEntries(SUBJECTS.map((subject) => [subject, presetSchema(subject) ?? {}]));
const validators = Object.fromEntries(SUBJECTS.map((subject) => [subject, ajv.compile(schemas[subject] ?? {})]));

/** Returns what the reader says of data, before it works anything out. */
function complaints(subject: string, data: unknown): string[] {
  const file: YamlFile = { name: "preset", data, place: () => undefined, complaints: [] };
  const says = (all: readonly { readonly diagnostic: { readonly says: string } }[]) =>
    all.map(({ diagnostic }) => diagnostic.says);
  if (subject === "stage") return says(readStagePreset(file).complaints);
  if (subject === "printer") return says(readPrinterPreset(file).complaints);
  const { value, complaints: outer } = readPartPreset(file);
  const inner = value === undefined ? [] : parseParameters(value.family, value.parameters).complaints;
  const settings = typeof value?.printer === "object" ? readSettings(file, value.printer, ["printer"]).complaints : [];
  return [...says(outer), ...inner.map(({ says: one }) => one), ...says(settings)];
}

/** The schema of a plan with the ranges of lengths where the lengths are, for bare numbers in one unit. */
function planIn(units: "mm" | "in"): JsonSchema {
  const scaled = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(scaled);
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).map(([key, one]) => [key, scaled(one)]);
    const own = Object.fromEntries(entries) as Record<string, unknown>;
    if (units === "mm" || own.minimum === undefined || !JSON.stringify(own.allOf ?? "").includes("/length")) return own;
    return { ...own, minimum: Number(own.minimum) / 25.4, maximum: Number(own.maximum) / 25.4 };
  };
  const schema = scaled(jsonSchemaOf(stageFileSchema, "plan")) as { properties: object; required: string[] };
  const properties = { ...schema.properties, units: { const: units } };
  return { ...schema, properties, required: [...schema.required, "units"] };
}

const presetsOf = (subject: string) =>
  subject === "stage"
    ? fc.oneof(randomPresets(planIn("mm")), randomPresets(planIn("in")))
    : randomPresets(schemas[subject] ?? {});

/** What JSON Schema has no words for: what the reader says there, and that it does so at least once. */
const BEYOND: Readonly<Record<string, RegExp>> = {
  "the range of a quantity that is written as text": / (?:\([-\d.e+]+ \S+\)|[-\d.e+]+ [^\s,]+), outside /,
  "a size of a bought item that no such thing has": /: \w+ is [-\d.e+]+$| is beyond all that is sold$/,
  "a pocket that does not hold its bearing": /does not hold a bearing/,
  "a hexagon or flange that its spacer has no room for": /does not stand on the plate|leaves no ring/,
  "wheels, plates and arms of a carriage that do not go together":
    /the plate has \d wheels|cannot be shared by two plates|arms at .* overlap|it ends before it begins/,
  "bolts for which there are no data": /there is no data for/,
  "lines and layers that do not go with the nozzle": /does not come from a|mm (first )?layer is too high|wall lines/,
  "names that differ in capitals only": /differ in capitals only/,
  "printers of families that there are not": /there is no part family/,
};

describe("shipped presets", () => {
  const files = readdirSync("presets", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => join("presets", file));

  test.each(files)("%s names its schema in the first line and fits it", (path) => {
    const text = readFileSync(path, "utf8");
    const [, named = ""] = /^# yaml-language-server: \$schema=(\S+)\n/.exec(text) ?? [];
    const data = readYaml(path, text).data as Record<string, unknown>;
    const subject = String(data.part ?? (data.stage === undefined ? "printer" : "stage"));
    expect(resolve(dirname(path), named)).toBe(resolve(`presets/schemas/${subject}.json`));
    const validate = new Ajv({ strict: true, allowUnionTypes: true }).compile(
      JSON.parse(readFileSync(resolve(dirname(path), named), "utf8")),
    );
    expect(validate(data), ajv.errorsText(validate.errors)).toBe(true);
  });
});

describe("quantities", () => {
  const KINDS = [
    "length",
    "angle",
    "force",
    "rate",
    "torque",
    "mass",
    "temperature",
    "pressure",
    "power",
    "voltage",
  ] as const;
  const SIGNS = ["1", "0", "12", "3/4", "1/0", " ", "  ", ".", "-", "+", "e", "E3", "'", '"', "″", "’", "ft", ",", "/"];

  test.each(KINDS)("a text is a %s to the pattern when it is one to the reader", (kind: Kind) => {
    const pattern = new RegExp(quantityPattern(kind), "u");
    const seen = { yes: 0, no: 0 };
    const piece = fc.constantFrom(...SIGNS, ...unitsOf(kind), "mm", "N", "kg", "K");
    const text = fc.oneof(
      fc.stringMatching(new RegExp(quantityPattern(kind)), { size: "xsmall" }),
      fc.array(piece, { minLength: 1, maxLength: 6 }).map((pieces) => pieces.join("")),
    );
    fc.assert(
      fc.property(text, (written) => {
        const reading = readQuantity(written, kind);
        const right = "value" in reading;
        const fits = pattern.test(written);
        seen[fits ? "yes" : "no"]++;
        if (right === fits) return;
        // A pattern cannot reckon: a number too large to hold, twelve inches or more behind feet.
        const large = "wrong" in reading && reading.wrong.startsWith("the number is too large");
        const feet = kind === "length" && /['′’‘]|ft/.test(written);
        expect(fits && (large || feet), `${JSON.stringify(written)}: ${JSON.stringify(reading)}`).toBe(true);
      }),
      { numRuns: runs(3000), seed: 5 },
    );
    expect(Math.min(seen.yes, seen.no)).toBeGreaterThan(runs(300, 60));
  });
});

describe("random presets", () => {
  /** Ten thousand in all. */
  const RUNS = Math.ceil(runs(10_000) / SUBJECTS.length);

  test.each(SUBJECTS)("of %s: the schema and the reader agree", (subject) => {
    const seen = { good: 0, bad: 0 };
    fc.assert(
      fc.property(presetsOf(subject), (data) => {
        const valid = validators[subject]?.(data) === true;
        const said = complaints(subject, data);
        if (valid === (said.length === 0)) seen[valid ? "good" : "bad"]++;
        else if (!valid) throw new Error(`only the schema complains: ${ajv.errorsText(validators[subject]?.errors)}`);
        else {
          const ours = said.filter((one) => !Object.values(BEYOND).some((words) => words.test(one)));
          expect(ours, "the schema has nothing against it").toEqual([]);
        }
      }),
      { numRuns: RUNS, seed: 20 },
    );
    // A generator that makes hardly anything right, or wrong, would prove little.
    expect(seen.good).toBeGreaterThan(RUNS / 6);
    expect(seen.bad).toBeGreaterThan(RUNS / 6);
  });
});

describe("where the schema and the reader part", () => {
  const part = (family: string, parameters: object) => ({ format: 1, part: family, parameters });
  const printer = (settings: object) => ({ format: 1, printer: "bench", settings });
  const bars = {
    a: { bar: "1 in", from: [0, 0, 0], to: [9, 0, 0] },
    A: { bar: "1 in", from: [0, 0, 0], to: [9, 0, 0] },
  };
  const motor = { at: [0, 0], pulleys: [{ loop: "low" }] };
  const loops = { low: { nodes: ["motor", "A"] } };
  const plan = {
    format: 1,
    stage: "s",
    bars: {},
    screws: {},
    motor,
    loops,
    plate: { at: [0, 0], size: [90, 90], mounts: {} },
  };

  test.each<[string, object]>([
    ["the range of a quantity that is written as text", part("wheel-spacer", { length: "3 in" })],
    ["a size of a bought item that no such thing has", part("screw-foot", { bearing: { row: "608", width: -7 } })],
    ["a pocket that does not hold its bearing", part("screw-foot", { pocketDepth: 2 })],
    ["a hexagon or flange that its spacer has no room for", part("wheel-spacer", { kind: "flanged", length: 1 })],
    ["wheels, plates and arms of a carriage that do not go together", part("wheel-plate", { left: ["fixed"] })],
    ["bolts for which there are no data", part("screw-foot", { bar: { row: "1 in", mountBolt: "M2.5" } })],
    ["lines and layers that do not go with the nozzle", printer({ nozzle: 0.2 })],
    ["names that differ in capitals only", { ...plan, bars }],
    ["printers of families that there are not", { ...plan, printers: { "screw-feet": "p.yaml" } }],
  ])("%s: only the reader sees it", (what, data) => {
    const subject = String((data as Record<string, unknown>).part ?? ("stage" in data ? "stage" : "printer"));
    expect(validators[subject]?.(data), ajv.errorsText(validators[subject]?.errors)).toBe(true);
    expect(complaints(subject, data).join("; ")).toMatch(BEYOND[what] ?? /never/);
  });

  test("the reader takes a word between blanks and a number in hexadecimal, the schema does not", () => {
    for (const parameters of [{ mount: " on-top " }, { bar: { row: "1 in", inertiaStrong: "0x2" } }]) {
      expect(complaints("screw-foot", part("screw-foot", parameters))).toEqual([]);
      expect(validators["screw-foot"]?.(part("screw-foot", parameters))).toBe(false);
    }
  });
});
