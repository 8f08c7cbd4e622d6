import { join } from "node:path";
import type { Manifest, ManifestSource } from "../outputs/manifest.ts";
import { type CautionName, isCaution } from "../parts/cautions.ts";
import type { Located } from "../presets/read.ts";
import type { StagePreset } from "../presets/stage-preset.ts";
import { earlierIn } from "./earlier-set.ts";
import { tryOrdinary } from "./file-text.ts";
import { besideFile } from "./files.ts";
import type { Target } from "./load.ts";
import { settleSet } from "./replace-set.ts";
import { sha256 } from "./sha256.ts";

/** What a set of files follows from, besides the files that its plan names. */
interface Asked {
  readonly set: readonly string[];
  readonly printer: string | undefined;
  readonly version: string;
}

/** A set that is there as this very run would make it: nothing has to be worked out again. */
export interface Unchanged {
  readonly folder: string;
  readonly manifest: Manifest;
  readonly messages: readonly Located[];
  readonly cautions: readonly CautionName[];
}

/** The plan of a machine before anything is worked out. */
interface PlanText {
  /** The file, as it was typed, and as messages name it. */
  readonly target: string;
  readonly name: string;
  readonly text: string | undefined;
  /** The name of the machine, if it is one. */
  readonly stage: unknown;
}

/** Returns the set of a plan where plan, printers, settings and program are as they were and every file is intact. */
export function unchangedSet(
  { target, name, text, stage }: PlanText,
  output: string,
  asked: Asked,
): Unchanged | undefined {
  if (typeof stage !== "string" || !/^[a-z0-9-]+$/.test(stage) || text === undefined) return undefined;
  const folder = join(output, stage);
  settleSet(folder);
  const earlier = earlierIn(folder);
  const source = earlier?.manifest.source;
  if (earlier === undefined || source === undefined || source.key !== keyOf(text, asked)) return undefined;
  const asBefore = (path: string, digest: string) => digestOf(besideFile(target, path)) === digest;
  if (!source.beside.every((one) => asBefore(one.path, one.sha256))) return undefined;
  if (!earlier.manifest.files.every(earlier.intact)) return undefined;
  const lines = text.split(/\r\n|\n/);
  const messages = source.messages.map(({ place, diagnostic }) => {
    const there = place === undefined ? undefined : { ...place, text: lines[place.line - 1] ?? "" };
    return { file: name, place: there, diagnostic };
  });
  return { folder, manifest: earlier.manifest, messages, cautions: source.cautions.filter(isCaution) };
}

/**
 * Returns what a set follows from and what was said of it, to be kept in its manifest. Undefined where a message stands
 * in another file than the plan: then the next run works everything out again.
 */
export function sourceOf(
  { target, file }: Target,
  preset: StagePreset,
  said: { readonly messages: readonly Located[]; readonly cautions: readonly string[] },
  asked: Asked,
): ManifestSource | undefined {
  if (file.text === undefined || said.messages.some((one) => one.file !== file.name)) return undefined;
  const named = asked.printer === undefined ? [preset.printer, ...Object.values(preset.printers)] : [];
  const paths = [...new Set(named)].filter((path) => path !== undefined);
  const beside = paths.map((path) => ({ path, sha256: digestOf(besideFile(target, path)) }));
  const messages = said.messages.map(({ place, diagnostic }) => {
    if (place === undefined) return { diagnostic };
    const { line, column, width } = place;
    return { place: { line, column, width }, diagnostic };
  });
  return { plan: sha256(file.text), key: keyOf(file.text, asked), beside, messages, cautions: said.cautions };
}

function keyOf(text: string, { set, printer, version }: Asked): string {
  const chosen = printer === undefined ? null : digestOf(printer);
  return sha256(JSON.stringify({ version, plan: sha256(text), set, printer: chosen }));
}

/** Returns what stands for the text of a file, or for its absence. */
function digestOf(path: string): string {
  const read = tryOrdinary(path);
  return "text" in read ? sha256(read.text) : "";
}
