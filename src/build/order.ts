import { hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { threeMf } from "../outputs/package/three-mf.ts";
import { sheet } from "../outputs/sheet.ts";
import { stl } from "../outputs/stl.ts";
import type { Companion, Design } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { type Draft, draftPart, type Made, type MadePiece, makeDraft } from "./make.ts";
import { packageFile, sheetFile, solidFile } from "./output-names.ts";
import { presetText } from "./preset-text.ts";
import type { Request } from "./request.ts";

/** A finished file, not yet on the disk. */
export interface FinishedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** One printed body with its file name and what it measures. */
export interface FinishedPiece {
  readonly file: string;
  readonly made: MadePiece;
  readonly figures: Figures;
}

/** A part with its files; companions follow as parts of their own. */
export interface Finished {
  readonly made: Made;
  readonly pieces: readonly FinishedPiece[];
  /** Empty when an error forbids the part. */
  readonly files: readonly FinishedFile[];
}

/** Returns the part that was asked for and, behind it, every part that it needs of other families, all but built. */
export function draftOrder(request: Request): Draft[] {
  const main = draftPart(request);
  return [main, ...companionRequests(request, main.design).map(draftPart)];
}

/** Returns what a part needs of other families, as requests of their own. */
export function companionRequests(request: Request, { companions }: Design): Request[] {
  return companions.map((companion) => companionRequest(request, companion));
}

/** Builds, verifies and writes down what was drawn. */
export function finishDrafts(drafts: readonly Draft[], kernel: Kernel, version: string): Finished[] {
  return drafts.map((draft) => finish(makeDraft(draft, kernel), version));
}

function companionRequest(request: Request, companion: Companion): Request {
  const family = FAMILIES.find(({ name }) => name === companion.family);
  if (family === undefined)
    throw new Error(`${request.family.name} asks for a ${companion.family}, which does not exist`);
  return {
    ...request,
    name: `${request.name}-${companion.role}`,
    family,
    parameters: family.schema.parse(companion.parameters),
    accept: [],
    // Said once, at the part that was asked for.
    calibrated: true,
  };
}

/** Writes down a part that was built. `version` is the program's, or that of the one whose file is made again. */
export function finish(made: Made, version: string): Finished {
  const { hash, diagnostics } = made;
  const pieces = finishedPieces(made);
  return { made, pieces, files: hasErrors(diagnostics) ? [] : filesOf({ made, pieces, hash, diagnostics, version }) };
}

/** Returns the bodies of a part that was built, with their file names and what they measure. */
export function finishedPieces({ request, design, pieces }: Made): FinishedPiece[] {
  return pieces.map((made) => ({
    file: solidFile(request.name, made.piece),
    made,
    figures: figuresOf(made, design, request.printer),
  }));
}

interface Contents extends Pick<Made, "hash" | "diagnostics"> {
  readonly made: Made;
  readonly pieces: readonly FinishedPiece[];
  readonly version: string;
}

function filesOf({ made, pieces, hash, diagnostics, version }: Contents): FinishedFile[] {
  const { request, design } = made;
  const solids = pieces.map(({ file, made: { mesh } }) => ({
    name: file,
    bytes: stl(mesh, bodyName(file), hash),
  }));
  const packed = threeMf({
    title: `${request.name}: ${design.title}`,
    description: `${request.family.purpose} Printed in ${design.material}: ${design.orientation}.`,
    application: `tramwright ${version}`,
    preset: presetText(request),
    hash,
    bedWidth: request.printer.bedX,
    bodies: pieces.map(({ file, made: { mesh, piece } }) => ({ name: bodyName(file), mesh, count: piece.count })),
  });
  const text = sheet({
    name: request.name,
    hash,
    purpose: request.family.purpose,
    design,
    printer: request.printer,
    pieces: pieces.map(({ file, made: { piece }, figures }) => ({ file, piece, ...figures })),
    diagnostics,
  });
  return [
    ...solids,
    { name: packageFile(request.name), bytes: packed },
    { name: sheetFile(request.name), bytes: new TextEncoder().encode(text) },
  ];
}

const bodyName = (file: string) => file.replace(/\.stl$/, "");
