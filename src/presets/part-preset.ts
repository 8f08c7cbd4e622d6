import { z } from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import type { AnyFamily } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { complaintsOf, unresolved } from "./issue.ts";
import type { Located, YamlFile } from "./read.ts";

/** The only format there is so far. */
export const FORMAT = 1;

/** File names are made of these, so that no preset can reach out of the output folder. */
const SLUG = /^[a-z0-9][a-z0-9-]{0,59}$/;

const slug = z.string("expected a name").regex(SLUG, "a name has only small letters, digits and hyphens, at most 60");

const schema = z.strictObject({
  format: z.literal(FORMAT),
  part: z.string("expected the name of a part family"),
  name: slug.optional(),
  printer: z.string("expected the path of a printer file").optional(),
  parameters: z.record(z.string(), z.unknown(), "expected parameters, one per line").default({}),
  accept: z
    .array(
      z.strictObject({
        check: z.string("expected the name of a check"),
        because: z.string("expected a reason").min(8),
      }),
    )
    .max(20)
    .default([]),
});

/** A part as somebody wrote it down: its family is known, its parameters are not yet parsed. */
export interface PartPreset {
  readonly family: AnyFamily;
  readonly name: string | undefined;
  readonly printer: string | undefined;
  readonly parameters: Readonly<Record<string, unknown>>;
  readonly accept: readonly { readonly check: string; readonly because: string }[];
}

export interface Read<What> {
  /** Undefined when the complaints leave nothing to work with. */
  readonly value: What | undefined;
  readonly complaints: readonly Located[];
}

/**
 * Returns the part preset in a YAML file, with every complaint about its outer keys. Where enough of it can be read the
 * value is there too, so that the parameters' complaints come in the same run.
 */
export function readPartPreset(file: YamlFile): Read<PartPreset> {
  if (file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const newer = newerFormat(file);
  if (newer !== undefined) return { value: undefined, complaints: [locatedIn(file, newer)] };
  const parsed = schema.safeParse(file.data);
  const outer = parsed.success ? [] : complaintsOf(parsed.error, [], Object.keys(schema.shape));
  const { part, name, printer, parameters, accept } = parsed.success ? parsed.data : salvage(file.data);
  const family = FAMILIES.find((candidate) => candidate.name === part);
  const strange = family === undefined && part !== undefined ? [unknownFamily(part)] : [];
  const complaints = [...outer, ...strange].map((one) => locatedIn(file, one));
  return { value: family === undefined ? undefined : { family, name, printer, parameters, accept }, complaints };
}

/** Returns what can still be used of a preset whose outer keys are wrong somewhere. */
function salvage(data: unknown): Partial<z.output<typeof schema>> & Pick<PartPreset, "parameters" | "accept"> {
  const { part, printer, parameters } = (typeof data === "object" && data !== null ? data : {}) as Record<
    string,
    unknown
  >;
  return {
    ...(typeof part === "string" ? { part } : {}),
    ...(typeof printer === "string" ? { printer } : {}),
    parameters: typeof parameters === "object" && parameters !== null ? (parameters as Record<string, unknown>) : {},
    accept: [],
  };
}

/** Returns the parameters as the family's schema wants them, or everything that is wrong with them. */
export function parseParameters(
  family: AnyFamily,
  parameters: unknown,
): { readonly value?: Readonly<Record<string, unknown>>; readonly complaints: readonly Diagnostic[] } {
  const parsed = family.schema.safeParse(parameters);
  if (parsed.success) return { value: parsed.data, complaints: [] };
  return { complaints: complaintsOf(parsed.error, ["parameters"], Object.keys(family.schema.shape)) };
}

export function unknownFamily(part: string): Diagnostic {
  const names = FAMILIES.map(({ name }) => name);
  return unresolved(["part"], `there is no part family ${part}`, nearest(part, names) ?? `one of ${names.join(", ")}`);
}

/** Returns a complaint when the file was written for a later version of this program. */
export function newerFormat(file: YamlFile): Diagnostic | undefined {
  const format = (file.data as { format?: unknown } | null | undefined)?.format;
  if (typeof format !== "number" || format <= FORMAT) return undefined;
  return unresolved(
    ["format"],
    `format ${format} is newer than this program, which reads format ${FORMAT}`,
    "a newer tramwright",
  );
}

/** Returns a Diagnostic with its place in the file: the value, or the nearest key around it. */
export function locatedIn(file: YamlFile, diagnostic: Diagnostic): Located {
  const around = ["parameters", "settings"].find((block) => block === diagnostic.path[0]);
  const candidates: Path[] = [diagnostic.path, ...(around === undefined ? [] : [[around]]), ["part"], ["printer"]];
  const place = candidates
    .map((path) => (path.length === 0 ? undefined : file.place(path)))
    .find((one) => one !== undefined);
  return { file: file.name, place, diagnostic };
}
