import type { Diagnostic } from "../core/diagnostic.ts";
import { hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { sheet } from "../outputs/sheet.ts";
import { stl } from "../outputs/stl.ts";
import type { Companion } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { type Made, type MadePiece, make } from "./make.ts";
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

/** Returns the part that was asked for and, behind it, every part that it needs of other families. */
export function finishOrder(request: Request, kernel: Kernel): Finished[] {
  const made = make(request, kernel);
  const companions = made.design.companions.map((companion) => companionRequest(request, companion));
  return [finish(made), ...companions.map((one) => finish(make(one, kernel)))];
}

function companionRequest(request: Request, companion: Companion): Request {
  const family = FAMILIES.find(({ name }) => name === companion.family);
  if (family === undefined)
    throw new Error(`${request.family.name} asks for a ${companion.family}, which does not exist`);
  return {
    ...request,
    name: `${request.name}-${family.name}`,
    family,
    parameters: family.schema.parse(companion.parameters),
    accept: [],
    // Said once, at the part that was asked for.
    calibrated: true,
  };
}

function finish(made: Made): Finished {
  const { request, design, hash, diagnostics } = made;
  const pieces = made.pieces.map((piece): FinishedPiece => {
    const suffix = piece.piece.name === "" ? "" : `-${piece.piece.name}`;
    return {
      file: `${request.name}${suffix}.stl`,
      made: piece,
      figures: figuresOf(piece, design, request.printer),
    };
  });
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
  return [...solids, { name: `${request.name}.md`, bytes: new TextEncoder().encode(text) }];
}
