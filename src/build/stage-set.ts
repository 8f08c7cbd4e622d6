import { type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { beltsSvg } from "../outputs/belts-svg.ts";
import { hardwareCsv } from "../outputs/hardware-csv.ts";
import { type Manifest, type ManifestFile, type ManifestPart, manifestText } from "../outputs/manifest.ts";
import { reportJson } from "../outputs/report-json.ts";
import type { Stage } from "../stage/index.ts";
import type { TestedAssembly } from "./assembly.ts";
import { canonical, sha256Hex } from "./hash.ts";
import { type Draft, drawPart } from "./make.ts";
import { type Finished, type FinishedFile, finishDraft, finishTwin } from "./order.ts";
import type { StagePart } from "./stage-parts.ts";

/** Where the files of parts stand in the set's folder. */
export const PARTS = "parts/";
export const MANIFEST = "manifest.json";

/** A part that was built in this run, or one that an earlier run built and that is still there, byte by byte. */
export type SetPart =
  | {
      readonly part: StagePart;
      /** Stands for its bodies. */
      readonly shape: string;
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
  const names = [...kept.pieces.map(({ file }) => file), `${kept.name}.md`].map((name) => `${PARTS}${name}`);
  const files = names.flatMap((name) => earlier.manifest.files.find((file) => file.name === name) ?? []);
  const whole = kept.pieces.length > 0 && files.length === names.length && files.every(earlier.intact);
  return whole ? { part, kept, files } : undefined;
}

/** Builds and verifies a part; one of whose bodies `built` holds the like is only written down. */
export function builtPart(part: StagePart, kernel: Kernel, built: readonly SetPart[] = []): SetPart {
  const draft = drawPart(part.request, part.designed);
  const shape = shapeOf(draft);
  const twin = built.find((one) => "shape" in one && one.shape === shape);
  if (twin !== undefined && "shape" in twin)
    return { part, shape, finished: finishTwin(draft, twin.finished, twin.found), found: twin.found };
  const finished = finishDraft(draft, kernel);
  return { part, shape, finished, found: finished.made.diagnostics.slice(part.designed.diagnostics.length) };
}

/** Returns what stands for the bodies of a part and for all that verifying them hangs on. */
function shapeOf({ request: { family, printer, accept, parameters }, pieces }: Draft): string {
  const { holeShrinkVertical, holeShrinkHorizontal, outerGrowth } = printer;
  // For a printer that makes openings too large the bodies are drawn a second time, from the parameters.
  const twice = Math.min(holeShrinkVertical, holeShrinkHorizontal, outerGrowth) < 0;
  const drawn = {
    family: family.name,
    printer,
    accept,
    pieces,
    ...(twice || pieces.length === 0 ? { parameters } : {}),
  };
  return sha256Hex(new TextEncoder().encode(canonical(drawn)));
}

/** Returns what verifying the mesh of a part found, now or when it was built. */
export function foundOf(one: SetPart): readonly Diagnostic[] {
  return "kept" in one ? one.kept.found : one.found;
}

/** Returns whether the part is good to print. */
export function isGood(one: SetPart): boolean {
  return "kept" in one || one.finished.files.length > 0;
}

export interface StageSet {
  readonly name: string;
  readonly stage: Stage;
  readonly parts: readonly SetPart[];
  /** Undefined where there was nothing to put together. */
  readonly assembly: TestedAssembly | undefined;
  readonly version: string;
}

/** Returns the files that this run has to write, the manifest last; parts that are kept are listed in it. */
export function setFiles({ name, stage, parts, assembly, version }: StageSet): FinishedFile[] {
  const good = parts.filter(isGood);
  const ofParts = good.flatMap((one) =>
    "kept" in one
      ? []
      : one.finished.files.map((file) => ({ ...file, name: `${PARTS}${file.name}`, part: one.part.hash })),
  );
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
    { name: "belts.svg", bytes: encoded(beltsSvg(stage, name)) },
  ];
  const kept = good.flatMap((one) => ("kept" in one ? one.files : []));
  const files = [...kept, ...[...ofParts, ...ofMachine].map(entryOf)].sort((a, b) => (a.name < b.name ? -1 : 1));
  const manifest = { madeBy: `tramwright ${version}`, stage: name, files, parts: good.map(manifestPart), assembly };
  return [...ofParts, ...ofMachine, { name: MANIFEST, bytes: encoded(manifestText(manifest)) }];
}

/** Returns the machine with what was found between its bodies among what is told of it. */
export function withFound(stage: Stage, assembly: TestedAssembly | undefined): Stage {
  return { ...stage, diagnostics: [...stage.diagnostics, ...(assembly?.found ?? [])] };
}

const encoded = (text: string) => new TextEncoder().encode(text);

function entryOf({ name, bytes, part }: FinishedFile & { readonly part?: string }): ManifestFile {
  return { name, bytes: bytes.length, sha256: sha256Hex(bytes), ...(part === undefined ? {} : { part }) };
}

function manifestPart(one: SetPart): ManifestPart {
  if ("kept" in one) return one.kept;
  const { part, finished, found } = one;
  const pieces = finished.pieces.map(({ file, made: { piece }, figures: { size, volume, mass } }) => ({
    file,
    title: piece.title,
    count: piece.count,
    size,
    volume,
    mass,
  }));
  return { name: part.request.name, family: part.request.family.name, hash: part.hash, key: part.key, pieces, found };
}
