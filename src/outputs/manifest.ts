import type { Diagnostic, Level } from "../core/diagnostic.ts";

/** Its name in the folder of the set. */
export const MANIFEST = "manifest.json";

/** A file of a set, as it was written. */
export interface ManifestFile {
  /** From the folder of the set, with `/`. */
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
  /** Hash of the part it belongs to; none for what concerns the whole machine. */
  readonly part?: string;
}

/** One printed body of a part. Lengths mm, volume mm3, mass g. */
export interface ManifestPiece {
  readonly file: string;
  readonly title: string;
  readonly count: number;
  readonly size: readonly [number, number, number];
  readonly volume: number;
  readonly mass: number;
}

/** A part of a set: enough to tell whether it must be built again, and to say what was found when it was built. */
export interface ManifestPart {
  readonly name: string;
  readonly family: string;
  readonly material: string;
  readonly hash: string;
  /** Stands for all that its files follow from: the hash, the program's version, what was accepted. */
  readonly key: string;
  /** Stands for its printed body, whatever loads it was checked for; sets of earlier versions have none. */
  readonly body?: string | undefined;
  /** The first part of the set that is the same body; left out where it is the first or the only one. */
  readonly sameAs?: string | undefined;
  readonly pieces: readonly ManifestPiece[];
  /** What verifying its mesh found. */
  readonly found: readonly Diagnostic[];
}

/** What was found between the bodies of the assembled machine, each with the parts that it forbids. */
export interface ManifestAssembly {
  /** Stands for all that it follows from. */
  readonly key: string;
  readonly found: readonly (Diagnostic & { readonly stops: readonly string[] })[];
}

/** A message about the plan, with its place in the plan's file. */
export interface ManifestMessage {
  readonly place?: { readonly line: number; readonly column: number; readonly width: number } | undefined;
  readonly diagnostic: Diagnostic;
}

/** What a set follows from, and what was said when it was made: said again by a run that finds nothing changed. */
export interface ManifestSource {
  /** SHA-256 of the plan's text; sets of earlier versions have none. */
  readonly plan?: string | undefined;
  /** Stands for the plan's text, what was laid over it, the printer chosen and the program's version. */
  readonly key: string;
  /** The other files that the plan names, from its folder. */
  readonly beside: readonly { readonly path: string; readonly sha256: string }[];
  readonly messages: readonly ManifestMessage[];
  /** Names of cautions. */
  readonly cautions: readonly string[];
}

/** What a set of files holds; written last. */
export interface Manifest {
  /** `tramwright 0.1.0`. */
  readonly madeBy: string;
  readonly stage: string;
  readonly files: readonly ManifestFile[];
  readonly parts: readonly ManifestPart[];
  /** Left out where there was nothing to put together. */
  readonly assembly?: ManifestAssembly | undefined;
  /** Left out where the next run must work everything out again. */
  readonly source?: ManifestSource | undefined;
}

/** Returns the manifest as JSON, with the words by which the program knows its own files in front. */
export function manifestText({ madeBy, stage, files, parts, assembly, source }: Manifest): string {
  return `${JSON.stringify({ madeBy, stage, files, parts, assembly, source }, undefined, 2)}\n`;
}

/** Returns the manifest in a text; undefined where it holds something else. */
export function readManifest(text: string): Manifest | undefined {
  const data = parsed(text);
  if (!isMap(data) || !isText(data.madeBy) || !isText(data.stage)) return undefined;
  const { madeBy, stage, files, parts, assembly, source } = data;
  if (!Array.isArray(files) || !files.every(isFile) || !Array.isArray(parts) || !parts.every(isPart)) return undefined;
  if (assembly !== undefined && !isAssembly(assembly)) return undefined;
  if (source !== undefined && !isSource(source)) return undefined;
  return { madeBy, stage, files, parts, ...(assembly && { assembly }), ...(source && { source }) };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

type Data = Readonly<Record<string, unknown>>;

const isMap = (value: unknown): value is Data => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === "string";
const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);

/** A name that stays inside the set's folder. */
const NAME = /^(?:parts\/)?[a-z0-9][A-Za-z0-9-]*\.[a-z0-9]+$/;

function isFile(value: unknown): value is ManifestFile {
  if (!isMap(value) || !isText(value.name) || !isNumber(value.bytes) || !isText(value.sha256)) return false;
  return NAME.test(value.name) && (value.part === undefined || isText(value.part));
}

function isPart(value: unknown): value is ManifestPart {
  if (!isMap(value) || ![value.name, value.family, value.material, value.hash, value.key].every(isText)) return false;
  const { pieces, found, sameAs, body } = value;
  if (body !== undefined && !isText(body)) return false;
  if (sameAs !== undefined && !isText(sameAs)) return false;
  return Array.isArray(pieces) && pieces.every(isPiece) && Array.isArray(found) && found.every(isFinding);
}

function isPiece(value: unknown): value is ManifestPiece {
  if (!isMap(value) || !isText(value.file) || !isText(value.title) || !Array.isArray(value.size)) return false;
  return value.size.length === 3 && [...value.size, value.count, value.volume, value.mass].every(isNumber);
}

function isAssembly(value: unknown): value is ManifestAssembly {
  if (!isMap(value) || !isText(value.key) || !Array.isArray(value.found)) return false;
  return value.found.every(
    (one: unknown) => isMap(one) && Array.isArray(one.stops) && one.stops.every(isText) && isFinding(one),
  );
}

function isSource(value: unknown): value is ManifestSource {
  if (!isMap(value) || !isText(value.key) || !(value.plan === undefined || isText(value.plan))) return false;
  const { beside, messages, cautions } = value;
  if (!Array.isArray(cautions) || !cautions.every(isText)) return false;
  const isBeside = (one: unknown) => isMap(one) && isText(one.path) && isText(one.sha256);
  return Array.isArray(beside) && beside.every(isBeside) && Array.isArray(messages) && messages.every(isMessage);
}

function isMessage(value: unknown): value is ManifestMessage {
  if (!isMap(value) || !isFinding(value.diagnostic)) return false;
  const { place } = value;
  return place === undefined || (isMap(place) && [place.line, place.column, place.width].every(isNumber));
}

const LEVELS: readonly Level[] = ["error", "warning", "note"];

function isFinding(value: unknown): value is Diagnostic {
  if (!isMap(value) || !Array.isArray(value.path) || !LEVELS.includes(value.level as Level)) return false;
  return [value.name, value.says, value.why, value.set].every(isText);
}

/** Returns the parts that are the same bodies, each group by its names; they name the first of their kind. */
export function alikeAmong(parts: readonly Pick<ManifestPart, "name" | "sameAs">[]): string[][] {
  const groups = new Map<string, string[]>();
  for (const { name, sameAs } of parts)
    if (sameAs !== undefined) groups.set(sameAs, [...(groups.get(sameAs) ?? [sameAs]), name]);
  return [...groups.values()];
}
