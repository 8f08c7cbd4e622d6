import * as z from "zod";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import { nearest } from "../core/nearest.ts";
import { metaOf } from "../core/parameter.ts";
import { complaintsOf, unresolved } from "../parts/complaints.ts";
import { FAMILIES } from "../parts/index.ts";
import { schemaAt } from "../parts/schema-walk.ts";
import { type Plan, planSchema, type Unread } from "../stage/index.ts";
import { inInches } from "./inches.ts";
import { blocksOf } from "./plan-blocks.ts";
import { format, locatedIn, maybeOther, printerPath, type Read, slug, wrongFile } from "./preset-file.ts";
import type { Located, YamlFile } from "./read.ts";
import { readableOf } from "./readable.ts";

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
  /** Where the file was not understood: what the plan has there was not typed so. */
  readonly unread: Unread;
}

/** More complaints than these are counted only: a file that is wrong all over needs no list of it. */
const MOST = 60;

const NOWHERE = { at: [0, 0], size: [100, 100], mounts: {} };

/** What stands for what a plan must have and was not understood; nothing is told of it. */
const HOLES: Readonly<Record<string, unknown>> = {
  format: 1,
  stage: "unread",
  bars: {},
  screws: {},
  loops: {},
  motor: { at: NOWHERE.at, pulleys: [{ loop: "none" }] },
  "motor.at": NOWHERE.at,
  "motor.pulleys": [{ loop: "none" }],
  plate: NOWHERE,
  "plate.at": NOWHERE.at,
  "plate.size": NOWHERE.size,
  "plate.mounts": NOWHERE.mounts,
};

/**
 * Returns the plan in a YAML file, with every complaint about its keys and values. Where only single things of it are
 * wrong the plan is there too, with what is usual in their place or without them, so that what is wrong with the rest
 * is told in the same run; `unread` names them.
 */
export function readStagePreset(file: YamlFile): Read<StagePreset> {
  if (file.data === undefined && file.complaints.length > 0) return { value: undefined, complaints: file.complaints };
  const { lost = [] } = file;
  // Without its unit no length of a plan means anything.
  if (maybeOther(file, "stage") || lost.some(([key]) => key === "units"))
    return { value: undefined, complaints: file.complaints };
  const wrong = wrongFile(file, "stage");
  if (wrong !== undefined) return { value: undefined, complaints: [...file.complaints, locatedIn(file, wrong)] };
  const data = inUnit(file.data as Record<string, unknown>);
  const parsed = stageFileSchema.safeParse(data);
  const outer = parsed.success ? [] : complaintsOf(parsed.error, { schema: stageFileSchema, data, under: [], lost });
  const blocks = blocksOf(stageFileSchema, data).flatMap((block) => blockComplaints(block, lost));
  const strange = [...unknownPrinters(data), ...blocks];
  const complaints = [...file.complaints, ...located(file, [...outer, ...strange])];
  const read = parsed.success ? { value: parsed.data, without: [] } : readableOf(stageFileSchema, data, HOLES);
  if (read === undefined) return { value: undefined, complaints };
  // A key that cannot be made out may be any: what would follow from it is not known.
  if (lost.some((path) => path.length === 1 && path[0] === "")) return { value: undefined, complaints };
  const unread = lost.map((path) => path.filter((step) => step !== ""));
  const told = [...complaints.map(({ diagnostic }) => diagnostic.path), ...unread].filter((path) => path.length > 0);
  return { value: { ...presetOf(read.value, data), unread: [...told, ...read.without] }, complaints };
}

function inUnit(data: Record<string, unknown>): Record<string, unknown> {
  const inches = String(data.units).trim() === "in";
  return inches ? (inInches(stageFileSchema, data) as Record<string, unknown>) : data;
}

function presetOf({ format: _, stage: name, printer, ...plan }: z.output<typeof stageFileSchema>, data: unknown) {
  return { name, printer, printers: plan.printers, plan, data };
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
function blockComplaints(
  { family, path, data }: ReturnType<typeof blocksOf>[number],
  lost: readonly Path[],
): Diagnostic[] {
  const shape = Object.entries(family.schema.shape as Record<string, z.ZodType>);
  const schema = z.strictObject(Object.fromEntries(shape.map(([key, one]) => [key, one.optional()])));
  const parsed = schema.safeParse(data);
  return parsed.success ? [] : complaintsOf(parsed.error, { schema, data, under: path as Path, lost });
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
