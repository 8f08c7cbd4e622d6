import * as z from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { meaning } from "../core/parameter.ts";
import { complaintsOf, unresolved } from "../parts/complaints.ts";
import type { AnyFamily } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { format, locatedIn, maybeOther, type Read, slug, wrongFile } from "./preset-file.ts";
import type { Located, YamlFile } from "./read.ts";

const NAMES = FAMILIES.map((family) => family.name);

/** A printer: its file, or its settings themselves, as in presets that travel in parts. */
export const partPrinter = meaning(
  z.union([z.string(), z.record(z.string(), z.unknown())], "expected the path of a printer file, or its settings"),
  "path of the printer's file, from the folder of this one; or the settings themselves",
);

/** The outer keys of a part's file; the family reads its parameters. */
export const partFileSchema = z.strictObject({
  format,
  part: meaning(z.string(`expected one of ${NAMES.join(", ")}`), "the family of the part"),
  name: slug("name").optional(),
  printer: partPrinter.optional(),
  calibrated: meaning(
    z.boolean("expected true or false"),
    "false where the printer's settings stand here as usual values, which nobody measured on a test piece",
  ).optional(),
  parameters: meaning(
    z.record(z.string(), z.unknown(), "expected parameters, one on each line below it"),
    "what was measured and chosen; what is left out takes its default",
  ).default({}),
  accept: meaning(
    z
      .array(
        z.strictObject(
          {
            check: meaning(z.string("expected the name of a check"), "the name of the defect"),
            because: meaning(z.string("expected a reason in words").min(8), "why it may stay, in words"),
          },
          {
            error: ({ code }) =>
              code === "invalid_type" ? "expected { check: <its name>, because: <reason> }" : undefined,
          },
        ),
        {
          error: ({ code }) =>
            code === "invalid_type" ? "expected a list of { check: ..., because: ... }" : undefined,
        },
      )
      .max(20),
    "errors that are made all the same, each with a reason",
  ).default([]),
});

/** A part as somebody wrote it down: its family is known, its parameters are not yet parsed. */
export interface PartPreset {
  readonly family: AnyFamily;
  readonly name: string | undefined;
  /** The path of the printer's file, or its settings, not yet parsed. */
  readonly printer: string | Readonly<Record<string, unknown>> | undefined;
  /** Whether settings that stand here were measured. */
  readonly calibrated: boolean;
  readonly parameters: Readonly<Record<string, unknown>>;
  readonly accept: readonly { readonly check: string; readonly because: string }[];
}

/**
 * Returns the part preset in a YAML file, with every complaint about its outer keys. Where enough of it can be read the
 * value is there too, so that the parameters' complaints come in the same run.
 */
export function readPartPreset(file: YamlFile): Read<PartPreset> {
  const { lost, complaints: told } = file;
  if (told.length > 0 && (lost === undefined || maybeOther(file, "part")))
    return { value: undefined, complaints: told };
  const wrong = wrongFile(file, "part");
  if (wrong !== undefined) return { value: undefined, complaints: [...told, locatedIn(file, wrong)] };
  const parsed = partFileSchema.safeParse(file.data);
  const outer = parsed.success
    ? []
    : complaintsOf(parsed.error, { schema: partFileSchema, data: file.data, under: [], ...(lost && { lost }) });
  const {
    part,
    name,
    printer,
    calibrated = true,
    parameters,
    accept,
  } = parsed.success ? parsed.data : salvage(file.data);
  const family = FAMILIES.find((candidate) => candidate.name === part);
  const strange = family === undefined && part !== undefined ? [unknownFamily(part)] : [];
  const complaints = [...told, ...[...outer, ...strange].map((one) => locatedIn(file, one))];
  const preset = { name, printer, calibrated, parameters, accept };
  return { value: family === undefined ? undefined : { family, ...preset }, complaints };
}

/** Returns what can still be used of a preset whose outer keys are wrong somewhere. */
function salvage(data: unknown): Partial<z.output<typeof partFileSchema>> & Pick<PartPreset, "parameters" | "accept"> {
  const { part, printer, parameters } = (typeof data === "object" && data !== null ? data : {}) as Record<
    string,
    unknown
  >;
  return {
    ...(typeof part === "string" ? { part } : {}),
    ...(isPrinter(printer) ? { printer } : {}),
    parameters: typeof parameters === "object" && parameters !== null ? (parameters as Record<string, unknown>) : {},
    accept: [],
  };
}

const isPrinter = (value: unknown): value is z.output<typeof partPrinter> => partPrinter.safeParse(value).success;

/** Returns the parameters as the family's schema wants them, or everything that is wrong with them. */
export function parseParameters(
  family: AnyFamily,
  parameters: unknown,
  lost: readonly Path[] = [],
): { readonly value?: Readonly<Record<string, unknown>>; readonly complaints: readonly Diagnostic[] } {
  const parsed = family.schema.safeParse(parameters);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  const { schema } = family;
  return { complaints: complaintsOf(parsed.error, { schema, data: parameters, under: ["parameters"], lost }) };
}

export function unknownFamily(part: string): Diagnostic {
  return unresolved(["part"], `there is no part family ${part}`, nearest(part, NAMES) ?? `one of ${NAMES.join(", ")}`);
}

/** Returns what was found of a part at its place in the part's file: most paths lead into its parameters. */
export function locatedInPart(file: YamlFile, one: Diagnostic): Located {
  const outside = Object.hasOwn(partFileSchema.shape, String(one.path[0]));
  return locatedIn(file, outside ? one : { ...one, path: ["parameters", ...one.path] });
}
