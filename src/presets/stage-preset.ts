import * as z from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { metaOf } from "../core/parameter.ts";
import { complaintsOf, unresolved } from "../parts/complaints.ts";
import { FAMILIES } from "../parts/index.ts";
import { schemaAt } from "../parts/schema-walk.ts";
import { type Plan, planSchema } from "../stage/index.ts";
import { inInches } from "./inches.ts";
import { blocksOf } from "./plan-blocks.ts";
import { format, locatedIn, printerPath, type Read, slug, wrongFile } from "./preset-file.ts";
import type { Located, YamlFile } from "./read.ts";

/** The file of a stage: what the plan holds, and what the file itself is. */
export const stageFileSchema = z.strictObject({
  format,
  stage: slug("stage"),
  printer: printerPath.optional(),
  ...planSchema.shape,
});

/** A machine as somebody wrote it down. */
export interface StagePreset {
  readonly name: string;
  /** The printer of all parts whose family `printers` does not name. */
  readonly printer: string | undefined;
  readonly printers: Readonly<Record<string, string>>;
  readonly plan: Plan;
  /** The file's data as they were read, lengths with their units. */
  readonly data: unknown;
}

/** More complaints than these are counted only: a file that is wrong all over needs no list of it. */
const MOST = 60;

/**
 * Returns the plan in a YAML file, with every complaint about its keys and values. Where unknown keys are all that is
 * wrong the plan is there too, without them, so that what names nothing is told in the same run.
 */
export function readStagePreset(file: YamlFile): Read<StagePreset> {
  if (file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const wrong = wrongFile(file, "stage");
  if (wrong !== undefined) return { value: undefined, complaints: [locatedIn(file, wrong)] };
  const data = inUnit(file.data as Record<string, unknown>);
  const parsed = stageFileSchema.safeParse(data);
  const outer = parsed.success ? [] : complaintsOf(parsed.error, { schema: stageFileSchema, data, under: [] });
  const strange = [...unknownPrinters(data), ...blocksOf(stageFileSchema, data).flatMap(blockComplaints)];
  const value = parsed.success ? parsed.data : withoutStrangers(parsed.error, data);
  const complaints = located(file, [...outer, ...strange]);
  return { value: value === undefined ? undefined : presetOf(value, data), complaints };
}

function inUnit(data: Record<string, unknown>): Record<string, unknown> {
  const inches = String(data.units).trim() === "in";
  return inches ? (inInches(stageFileSchema, data) as Record<string, unknown>) : data;
}

function presetOf({ format: _, stage: name, printer, ...plan }: z.output<typeof stageFileSchema>, data: unknown) {
  return { name, printer, printers: plan.printers, plan, data };
}

/** Returns the plan without the keys that nobody knows; undefined where something else is wrong as well. */
function withoutStrangers({ issues }: z.ZodError, data: unknown): z.output<typeof stageFileSchema> | undefined {
  const copy = structuredClone(data);
  for (const issue of issues) {
    if (issue.code !== "unrecognized_keys") return undefined;
    const holder = issue.path.reduce<unknown>((at, step) => (at as Record<PropertyKey, unknown>)[step], copy);
    for (const key of issue.keys) delete (holder as Record<string, unknown>)[key];
  }
  const parsed = stageFileSchema.safeParse(copy);
  return parsed.success ? parsed.data : undefined;
}

const NAMES = FAMILIES.map(({ name }) => name);

function unknownPrinters({ printers }: Record<string, unknown>): Diagnostic[] {
  const named = typeof printers === "object" && printers !== null ? Object.keys(printers) : [];
  return named
    .filter((name) => !NAMES.includes(name))
    .map((name) => {
      const set = nearest(name, NAMES) ?? `one of ${NAMES.join(", ")}`;
      return unresolved(["printers", name], `there is no part family ${name}`, set);
    });
}

/** Returns what is wrong with each parameter by itself; how they go together the family says of the whole part. */
function blockComplaints({ family, path, data }: ReturnType<typeof blocksOf>[number]): Diagnostic[] {
  const shape = Object.entries(family.schema.shape as Record<string, z.ZodType>);
  const schema = z.strictObject(Object.fromEntries(shape.map(([key, one]) => [key, one.optional()])));
  const parsed = schema.safeParse(data);
  return parsed.success ? [] : complaintsOf(parsed.error, { schema, data, under: path as Path });
}

function located(file: YamlFile, complaints: readonly Diagnostic[]): Located[] {
  const told = complaints.slice(0, MOST).map((one) => locatedIn(file, one));
  const more = complaints.length - told.length;
  if (more === 0) return told;
  const says = `${more} more complaints are left out`;
  return [...told, locatedIn(file, unresolved([], says, "what is listed, then try again"))];
}

/** Returns what stands at a path of a plan that leaves it out; undefined where nothing does. */
export function usualAt(path: Path): unknown {
  for (let depth = 1; depth < path.length; depth++) {
    const block = schemaAt(stageFileSchema, path.slice(0, depth));
    const family = FAMILIES.find(({ name }) => block !== undefined && name === metaOf(block).family);
    if (family !== undefined)
      return depth === path.length - 1 ? family.schema.parse({})[String(path[depth])] : undefined;
  }
  const at = schemaAt(stageFileSchema, path);
  return at instanceof z.ZodDefault ? at.def.defaultValue : undefined;
}
