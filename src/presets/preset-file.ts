import * as z from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { LIMITS, meaning, presented } from "../core/parameter.ts";
import { unresolved } from "../parts/complaints.ts";
import { FAMILIES } from "../parts/index.ts";
import { type Located, TOP, type YamlFile } from "./read.ts";

/** The only format there is so far. */
export const FORMAT = 1;

export const format = meaning(
  z.literal(FORMAT, `expected ${FORMAT}, the version of the format`),
  "version of the format of this file",
);

/** Where the file of a printer is. */
export const printerPath = meaning(
  z.string("expected the path of a printer file"),
  "path of the printer's file, from the folder of this one",
);

/** File names are made of these, so that no preset can reach out of the output folder. */
const SLUG = /^[a-z0-9][a-z0-9-]{0,59}$/;

/** A name that files and folders may have; the cure repeats `key`. */
export const slug = (key: string) => {
  const checked = z.string("expected a name in small letters").superRefine((text, ctx) => {
    if (SLUG.test(text)) return;
    const message = `${presented(text)} is no name for files: those have only small letters, digits and hyphens, at most 60`;
    ctx.addIssue({ code: "custom", message, params: { set: `${key}: ${slugFrom(text)}` } });
  });
  const description = "its name, which names the files: small letters, digits and hyphens, at most 60";
  return meaning(checked.register(LIMITS, { pattern: SLUG.source }), description);
};

/** Returns the nearest name that files may have. */
export function slugFrom(text: string): string {
  const slug = text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return slug === "" ? "part" : slug.slice(0, 60);
}

export interface Read<What> {
  /** Undefined when the complaints leave nothing to work with. */
  readonly value: What | undefined;
  readonly complaints: readonly Located[];
}

/** What a file may describe, with the key that tells it from the others. */
const KINDS = { part: "part", stage: "stage", printer: "settings" } as const;

export type FileKind = keyof typeof KINDS;

const A: Readonly<Record<FileKind, string>> = { part: "a part", stage: "a whole stage", printer: "a printer" };

/** What to do with a file of one kind where another is wanted: `found>wanted`. */
const CURES: Readonly<Record<string, (name: string) => string>> = {
  "printer>part": (name) => `printer: ${name} in the preset of a part, or --printer ${name} behind one`,
  "printer>stage": (name) => `printer: ${name} in the plan of a stage, or --printer ${name} behind one`,
  "part>printer": (name) => `a file with printer: and settings:; ${name} is a preset to make`,
  "stage>printer": (name) => `a file with printer: and settings:; ${name} is a plan to make`,
  "part>stage": (name) =>
    `tramwright make ${name} for the part; the plan of a stage has stage: <name> instead of part:`,
  "stage>part": (name) => `tramwright make ${name} or report ${name}, which take the plan of a stage`,
};

/** Returns what a file describes; undefined when it says nothing of the kind. */
export function kindOf({ data }: YamlFile): FileKind | undefined {
  const keys = typeof data === "object" && data !== null ? Object.keys(data) : [];
  return (["part", "stage", "printer"] as const).find((kind) => keys.includes(KINDS[kind]));
}

/** Returns whether what a file describes may stand in lines of it that cannot be read: it does not say `wanted`. */
export function maybeOther(file: YamlFile, wanted: FileKind): boolean {
  const outer: readonly string[] = ["", ...Object.values(KINDS)];
  const hidden = file.lost?.some(([key, ...deeper]) => deeper.length === 0 && outer.includes(String(key))) ?? false;
  return hidden && kindOf(file) !== wanted;
}

/** Returns a complaint when the file cannot be what is wanted: no keys, a newer format, or something else described. */
export function wrongFile(file: YamlFile, wanted: FileKind): Diagnostic | undefined {
  return noKeys(file, wanted) ?? newerFormat(file) ?? wrongKind(file, wanted);
}

function noKeys({ data }: YamlFile, wanted: FileKind): Diagnostic | undefined {
  if (typeof data === "object" && data !== null && !Array.isArray(data)) return undefined;
  const empty = data === undefined || data === null;
  const says = empty ? "the file is empty" : `the file holds ${presented(data)}, not keys with values`;
  const rest = {
    part: `part: one of ${FAMILIES.map(({ name }) => name).join(", ")}, and parameters:`,
    stage: "stage: <its name>, bars:, screws:, motor:, loops: and plate:",
    printer: "printer: <its name>, and settings:",
  };
  return unresolved([], says, `format: ${FORMAT}, ${rest[wanted]}`);
}

function wrongKind(file: YamlFile, wanted: FileKind): Diagnostic | undefined {
  if (Object.keys(file.data as object).includes(KINDS[wanted])) return undefined;
  const found = kindOf(file);
  if (found === undefined) return undefined;
  const cure = CURES[`${found}>${wanted}`]?.(file.name) ?? `a file of ${A[wanted]}`;
  return unresolved([KINDS[found]], `this file describes ${A[found]}, and ${A[wanted]} is wanted`, cure);
}

/** Returns a complaint when the file was written for a later version of this program. */
function newerFormat(file: YamlFile): Diagnostic | undefined {
  const { format } = file.data as { format?: unknown };
  if (!Number.isInteger(format) || Number(format) <= FORMAT) return undefined;
  return unresolved(
    ["format"],
    `format ${format} is newer than this program, which reads formats up to ${FORMAT}`,
    `a newer tramwright, one that reads format ${format}; tramwright --version tells which this is`,
  );
}

/** Returns a Diagnostic with its place in the file: the value, or the nearest key around it. */
export function locatedIn(file: YamlFile, diagnostic: Diagnostic): Located {
  if (diagnostic.path.length === 0) return { file: file.name, place: TOP, diagnostic };
  const around = ["parameters", "settings"].find((block) => block === diagnostic.path[0]);
  const outer = Object.values(KINDS).map((key) => [key]);
  const candidates: Path[] = [diagnostic.path, ...(around === undefined ? [] : [[around]]), ...outer, ["printer"]];
  const place = candidates.map((path) => file.place(path)).find((one) => one !== undefined);
  return { file: file.name, place, diagnostic };
}
