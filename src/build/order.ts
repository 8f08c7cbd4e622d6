import type { Diagnostic } from "../core/diagnostic.ts";
import { hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { sheet } from "../outputs/sheet.ts";
import { stl } from "../outputs/stl.ts";
import type { Companion, Design } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { type Draft, draftPart, type Made, type MadePiece, makeDraft } from "./make.ts";
import { sheetFile, solidFile } from "./output-names.ts";
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
export function finishDrafts(drafts: readonly Draft[], kernel: Kernel): Finished[] {
  return drafts.map((draft) => finish(makeDraft(draft, kernel)));
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

/** Writes down a part that was built. */
export function finish(made: Made): Finished {
  const { request, design, hash, diagnostics } = made;
  const pieces = made.pieces.map(
    (piece): FinishedPiece => ({
      file: solidFile(request.name, piece.piece),
      made: piece,
      figures: figuresOf(piece, design, request.printer),
    }),
  );
  return { made, pieces, files: hasErrors(diagnostics) ? [] : filesOf(made, pieces, hash, diagnostics) };
}

function filesOf(
  made: Made,
  pieces: readonly FinishedPiece[],
  hash: string,
  diagnostics: readonly Diagnostic[],
): FinishedFile[] {
  const { request, design } = made;
  const solids = pieces.map(({ file, made: { mesh } }) => ({
    name: file,
    bytes: stl(mesh, file.replace(/\.stl$/, ""), hash),
  }));
  const text = sheet({
    name: request.name,
    hash,
    purpose: request.family.purpose,
    design,
    printer: request.printer,
    pieces: pieces.map(({ file, made: { piece }, figures }) => ({ file, piece, ...figures })),
    diagnostics,
  });
  return [...solids, { name: sheetFile(request.name), bytes: new TextEncoder().encode(text) }];
}
