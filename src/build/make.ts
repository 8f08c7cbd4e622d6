import { defect } from "../core/defects.ts";
import { count, type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { applyAcceptance } from "../parts/acceptance.ts";
import type { Design } from "../parts/family.ts";
import type { Piece } from "../parts/piece.ts";
import type { Printer } from "../printing/printer.ts";
import { acceptedAny, wrongAcceptances } from "./accept.ts";
import type { PieceWork } from "./carve.ts";
import { type PieceResult, pieceResult } from "./piece-work.ts";
import { hashOf } from "./preset-text.ts";
import type { Request } from "./request.ts";

/** One body, built and verified. */
export interface MadePiece extends Omit<PieceResult, "diagnostics"> {
  readonly piece: Piece;
}

/** A part worked out, built and verified. With an error among the diagnostics nothing of it may be written. */
export interface Made {
  readonly request: Request;
  readonly design: Design;
  readonly hash: string;
  readonly pieces: readonly MadePiece[];
  readonly diagnostics: readonly Diagnostic[];
}

/** A part worked out, and what arithmetic has to say about it. */
export interface Designed {
  readonly design: Design;
  readonly diagnostics: readonly Diagnostic[];
  /** Engraved on a part that is made against an error somebody accepted. */
  readonly mark?: string;
}

/** Returns everything arithmetic says about a part, without building it. */
export function designPart(request: Request): Designed {
  const { family, parameters, printer, accept } = request;
  const first = family.design(parameters, printer);
  const mark = acceptedAny(first.diagnostics, accept) ? "X" : undefined;
  const design = mark === undefined ? first : family.design(parameters, printer, mark);
  const raw = [...design.diagnostics, ...uncalibrated(request)];
  const diagnostics = [...applyAcceptance(raw, accept, family), ...wrongAcceptances(accept, family)];
  return { design, diagnostics, ...(mark === undefined ? {} : { mark }) };
}

/** A part worked out and drawn, not yet built. With an error from the arithmetic nothing is drawn. */
export interface Draft extends Designed {
  readonly request: Request;
  readonly pieces: readonly Piece[];
}

/** Returns everything about a part that needs no kernel. */
export function draftPart(request: Request): Draft {
  return drawPart(request, designPart(request));
}

/** Draws a part that is worked out. */
export function drawPart(request: Request, designed: Designed): Draft {
  return { ...designed, request, pieces: hasErrors(designed.diagnostics) ? [] : designed.design.pieces() };
}

/** Builds and verifies a part. With an error from the arithmetic there is nothing to build and `pieces` is empty. */
export function make(request: Request, kernel: Kernel): Made {
  return makeDraft(draftPart(request), kernel);
}

/** Builds and verifies what was drawn. */
export function makeDraft(draft: Draft, kernel: Kernel): Made {
  return madeOf(
    draft,
    worksOf(draft).map((work) => pieceResult(work, kernel)),
  );
}

/** Returns what is to be built of a part that is drawn, body by body. */
export function worksOf({ request, pieces, mark }: Draft): PieceWork[] {
  const wanted = asWanted(request, mark);
  return pieces.map((piece, index) => ({ piece, wanted: wanted?.[index], printer: request.printer }));
}

/** Returns the part whose bodies came out like this: `results` are those of its works, in their order. */
export function madeOf({ request, design, pieces, diagnostics }: Draft, results: readonly PieceResult[]): Made {
  const found = applyAcceptance(
    results.flatMap((one) => one.diagnostics),
    request.accept,
    request.family,
  );
  const made = results.map(({ mesh, measures, fit }, index) => ({
    piece: pieces[index] as Piece,
    mesh,
    measures,
    fit,
  }));
  return { request, design, hash: hashOf(request), pieces: made, diagnostics: [...diagnostics, ...found] };
}

/**
 * Returns the pieces as they come out of a printer that makes openings larger or outsides smaller than drawn. For it
 * they are drawn the other way, so that the drawing alone would not let the hardware in. Undefined for other printers.
 */
function asWanted({ family, parameters, printer }: Request, mark?: string): readonly Piece[] | undefined {
  const { holeShrinkVertical, holeShrinkHorizontal, outerGrowth } = printer;
  if (Math.min(holeShrinkVertical, holeShrinkHorizontal, outerGrowth) >= 0) return undefined;
  const even: Printer = {
    ...printer,
    holeShrinkVertical: Math.max(0, holeShrinkVertical),
    holeShrinkHorizontal: Math.max(0, holeShrinkHorizontal),
    outerGrowth: Math.max(0, outerGrowth),
  };
  return family.design(parameters, even, mark).pieces();
}

/** Returns one line such as "2 errors, 1 warning". */
export function tally(diagnostics: readonly Diagnostic[]): string {
  const { error, warning } = count(diagnostics);
  const plural = (amount: number, word: string) => `${amount} ${word}${amount === 1 ? "" : "s"}`;
  return `${plural(error, "error")}, ${plural(warning, "warning")}`;
}

function uncalibrated({ calibrated }: Request): Diagnostic[] {
  if (calibrated) return [];
  return [
    defect("printer-not-calibrated", {
      level: "warning",
      path: ["printer"],
      says: "no printer calibration was given, so usual values stand in for yours",
      set: "printer: <file of your printer>, from a printed test piece: tramwright explain printer",
    }),
  ];
}
