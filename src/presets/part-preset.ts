import * as z from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { presented } from "../core/parameter.ts";
import { complaintsOf, unresolved } from "../parts/complaints.ts";
import type { AnyFamily } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { type Located, TOP, type YamlFile } from "./read.ts";

/** The only format there is so far. */
export const FORMAT = 1;

/** File names are made of these, so that no preset can reach out of the output folder. */
const SLUG = /^[a-z0-9][a-z0-9-]{0,59}$/;

const name = z.string("expected a name in small letters").superRefine((text, ctx) => {
  if (SLUG.test(text)) return;
  const message = `${presented(text)} is no name for files: those have only small letters, digits and hyphens, at most 60`;
  ctx.addIssue({ code: "custom", message, params: { set: `name: ${slugFrom(text)}` } });
});

const NAMES = FAMILIES.map((family) => family.name);

export const format = z.literal(FORMAT, `expected ${FORMAT}, the version of the format`);

const schema = z.strictObject({
  format,
  part: z.string(`expected one of ${NAMES.join(", ")}`),
  name: name.optional(),
  printer: z.string("expected the path of a printer file").optional(),
  parameters: z.record(z.string(), z.unknown(), "expected parameters, one on each line below it").default({}),
  accept: z
    .array(
      z.strictObject(
        {
          check: z.string("expected the name of a check"),
          because: z.string("expected a reason in words").min(8),
        },
        {
          error: ({ code }) =>
            code === "invalid_type" ? "expected { check: <its name>, because: <reason> }" : undefined,
        },
      ),
      {
        error: ({ code }) => (code === "invalid_type" ? "expected a list of { check: ..., because: ... }" : undefined),
      },
    )
    .max(20)
    .default([]),
});

/** Returns the nearest name that files may have. */
export function slugFrom(text: string): string {
  const slug = text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return slug === "" ? "part" : slug.slice(0, 60);
}

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
  const wrong = noKeys(file) ?? newerFormat(file) ?? printerInstead(file);
  if (wrong !== undefined) return { value: undefined, complaints: [locatedIn(file, wrong)] };
  const parsed = schema.safeParse(file.data);
  const outer = parsed.success ? [] : complaintsOf(parsed.error, { schema, data: file.data, under: [] });
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
  const { schema } = family;
  return { complaints: complaintsOf(parsed.error, { schema, data: parameters, under: ["parameters"] }) };
}

export function unknownFamily(part: string): Diagnostic {
  return unresolved(["part"], `there is no part family ${part}`, nearest(part, NAMES) ?? `one of ${NAMES.join(", ")}`);
}

/** Returns a complaint when the file is empty, or holds something else than keys with values. */
export function noKeys({ data }: YamlFile): Diagnostic | undefined {
  if (typeof data === "object" && data !== null && !Array.isArray(data)) return undefined;
  const empty = data === undefined || data === null;
  const says = empty ? "the file is empty" : `the file holds ${presented(data)}, not keys with values`;
  return unresolved([], says, `format: ${FORMAT}, part: one of ${NAMES.join(", ")}, and parameters:`);
}

/** Returns a complaint when the file describes a printer, not a part. */
function printerInstead({ data, name }: YamlFile): Diagnostic | undefined {
  const keys = Object.keys(data as object);
  if (!keys.includes("settings") || keys.includes("part")) return undefined;
  const set = `printer: ${name} in the preset of a part, or --printer ${name} behind one`;
  return unresolved(["settings"], "this file describes a printer, and a part is wanted", set);
}

/** Returns a complaint when the file was written for a later version of this program. */
export function newerFormat(file: YamlFile): Diagnostic | undefined {
  const format = (file.data as { format?: unknown } | null | undefined)?.format;
  if (!Number.isInteger(format) || Number(format) <= FORMAT) return undefined;
  return unresolved(
    ["format"],
    `format ${format} is newer than this program, which reads format ${FORMAT}`,
    "a newer tramwright",
  );
}

/** Returns a Diagnostic with its place in the file: the value, or the nearest key around it. */
export function locatedIn(file: YamlFile, diagnostic: Diagnostic): Located {
  if (diagnostic.path.length === 0) return { file: file.name, place: TOP, diagnostic };
  const around = ["parameters", "settings"].find((block) => block === diagnostic.path[0]);
  const candidates: Path[] = [diagnostic.path, ...(around === undefined ? [] : [[around]]), ["part"], ["printer"]];
  const place = candidates
    .map((path) => (path.length === 0 ? undefined : file.place(path)))
    .find((one) => one !== undefined);
  return { file: file.name, place, diagnostic };
}
