import { type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import { beltsSvg } from "../outputs/belts-svg.ts";
import { hardwareCsv } from "../outputs/hardware-csv.ts";
import {
  MANIFEST,
  type Manifest,
  type ManifestFile,
  type ManifestPart,
  type ManifestSource,
  manifestText,
} from "../outputs/manifest.ts";
import { reportJson } from "../outputs/report-json.ts";
import type { Stage } from "../stage/index.ts";
import { alike, firstOfKind } from "./alike.ts";
import type { TestedAssembly } from "./assembly.ts";
import { type Digest, sha256Hex } from "./hash.ts";
import type { Finished, FinishedFile } from "./order.ts";
import { PARTS, packageFile, sheetFile } from "./output-names.ts";
import { bodyKey } from "./part-shape.ts";
import type { StagePart } from "./stage-parts.ts";

export { PARTS } from "./output-names.ts";

/** A part that was built in this run, or one that an earlier run built and that is still there, byte by byte. */
export type SetPart =
  | {
      readonly part: StagePart;
      readonly finished: Finished;
      readonly found: readonly Diagnostic[];
    }
  | { readonly part: StagePart; readonly kept: ManifestPart; readonly files: readonly ManifestFile[] };

/** What an earlier run left: its manifest, and whether a file it lists is there with the same bytes. */
export interface Earlier {
  readonly manifest: Manifest;
  readonly intact: (file: ManifestFile) => boolean;
}

/** Returns the part as an earlier run left it; undefined where it must be built. */
export function keptPart(part: StagePart, earlier: Earlier | undefined): SetPart | undefined {
  const kept = earlier?.manifest.parts.find(({ key, name }) => key === part.key && name === part.request.name);
  if (earlier === undefined || kept === undefined || hasErrors(part.designed.diagnostics)) return undefined;
  const own = [...kept.pieces.map(({ file }) => file), packageFile(kept.name), sheetFile(kept.name)];
  const names = own.map((name) => `${PARTS}${name}`);
  const files = names.flatMap((name) => earlier.manifest.files.find((file) => file.name === name) ?? []);
  const whole = kept.pieces.length > 0 && files.length === names.length && files.every(earlier.intact);
  return whole ? { part, kept, files } : undefined;
}

/** Returns what verifying the mesh of a part found, now or when it was built. */
export function foundOf(one: SetPart): readonly Diagnostic[] {
  return "kept" in one ? one.kept.found : one.found;
}

/** Returns whether the part is good to print. */
export function isGood(one: SetPart): boolean {
  return "kept" in one || one.finished.files.length > 0;
}

/** Returns the names of parts of a set that are the same bodies, each group by itself. */
export function alikeIn(parts: readonly SetPart[]): string[][] {
  return alike(parts.filter(isGood).map(({ part }) => part));
}

export interface StageSet {
  readonly name: string;
  readonly stage: Stage;
  readonly parts: readonly SetPart[];
  /** Undefined where there was nothing to put together. */
  readonly assembly: TestedAssembly | undefined;
  readonly version: string;
  readonly source?: ManifestSource | undefined;
  /** Names of its parts that are the same bodies, where that is known; else it is looked for. */
  readonly alike?: readonly (readonly string[])[] | undefined;
  /** The text of belts.svg, where it is drawn already. */
  readonly belts?: string | undefined;
}

/** Returns the files that this run has to write for a part: none for one that is kept. */
export function partFiles(one: SetPart): FinishedFile[] {
  return "kept" in one ? [] : one.finished.files.map(({ name, bytes }) => ({ name: `${PARTS}${name}`, bytes }));
}

/** Returns the files that this run has to write, the manifest last; parts that are kept are listed in it. */
export function setFiles(
  { name, stage, parts, assembly, version, source, alike: groups, belts }: StageSet,
  digest: Digest = sha256Hex,
): FinishedFile[] {
  const good = parts.filter(isGood);
  const ofParts = good.flatMap((one) => partFiles(one).map((file) => ({ ...file, part: one.part.hash })));
  const designs = good.map(({ part }) => ({ name: part.request.name, design: part.designed.design }));
  const listed = good.map(({ part }) => ({
    name: part.request.name,
    family: part.request.family.name,
    hash: part.hash,
    owner: part.owner,
  }));
  // Files of the whole machine; one more joins by one line.
  const ofMachine: FinishedFile[] = [
    {
      name: "report.json",
      bytes: encoded(reportJson({ name, stage: withFound(stage, assembly), parts: listed, version })),
    },
    { name: "hardware.csv", bytes: encoded(hardwareCsv(stage, designs)) },
    { name: "belts.svg", bytes: encoded(belts ?? beltsSvg(stage, name)) },
  ];
  const kept = good.flatMap((one) => ("kept" in one ? one.files : []));
  const files = [...kept, ...[...ofParts, ...ofMachine].map((file) => entryOf(file, digest))].sort((a, b) =>
    a.name < b.name ? -1 : 1,
  );
  const firsts = firstOfKind(groups ?? alikeIn(parts));
  const manifest = {
    madeBy: `tramwright ${version}`,
    stage: name,
    files,
    parts: good.map((one) => manifestPart(one, bodyKey(one.part, digest), firsts.get(one.part.request.name))),
    assembly,
    source,
  };
  return [...ofParts, ...ofMachine, { name: MANIFEST, bytes: encoded(manifestText(manifest)) }];
}

/** Returns the machine with what was found between its bodies among what is told of it. */
export function withFound(stage: Stage, assembly: TestedAssembly | undefined): Stage {
  return { ...stage, diagnostics: [...stage.diagnostics, ...(assembly?.found ?? [])] };
}

const encoded = (text: string) => new TextEncoder().encode(text);

function entryOf({ name, bytes, part }: FinishedFile & { readonly part?: string }, digest: Digest): ManifestFile {
  return { name, bytes: bytes.length, sha256: digest(bytes), ...(part === undefined ? {} : { part }) };
}

/** What an earlier run kept may have had another first of its kind. */
function manifestPart(one: SetPart, body: string | undefined, sameAs: string | undefined): ManifestPart {
  if ("kept" in one) {
    const { pieces, found, sameAs: _, ...kept } = one.kept;
    return { ...kept, body, sameAs, pieces, found };
  }
  const { part, finished, found } = one;
  const pieces = finished.pieces.map(({ file, made: { piece }, figures: { size, volume, mass } }) => ({
    file,
    title: piece.title,
    count: piece.count,
    size,
    volume,
    mass,
  }));
  const { name, family } = part.request;
  const { material } = part.designed.design;
  return { name, family: family.name, material, hash: part.hash, key: part.key, body, sameAs, pieces, found };
}
