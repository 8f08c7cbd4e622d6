import { defect } from "../core/defects.ts";
import { count, type Diagnostic, hasErrors } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { printMesh, restingPlace } from "../geometry/print-mesh.ts";
import { applyAcceptance } from "../parts/acceptance.ts";
import type { Design } from "../parts/family.ts";
import type { Piece } from "../parts/piece.ts";
import { shrinkScale } from "../printing/compensation.ts";
import type { Printer } from "../printing/printer.ts";
import { inspect, type Measures } from "../verify/inspect.ts";
import { boxRegion, type Region } from "../verify/region.ts";
import { acceptedAny, wrongAcceptances } from "./accept.ts";
import { shortHash } from "./hash.ts";
import type { Request } from "./request.ts";
import { type Fit, verifyPiece } from "./verify-piece.ts";

/** Samples per mm2 of surface in the search for thin walls; every facet is sampled at least once. */
const WALL_SAMPLES = 0.2;

/** One body, built and verified. */
export interface MadePiece {
  readonly piece: Piece;
  /** The mesh as printed: on the bed, centred, on the grid of the file. */
  readonly mesh: Mesh;
  readonly measures: Measures;
  readonly fit: Fit;
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
export function makeDraft({ request, design, pieces, diagnostics, mark }: Draft, kernel: Kernel): Made {
  const hash = hashOf(request);
  const wanted = asWanted(request, mark) ?? pieces;
  const built = pieces.map((piece, index) => buildPiece(piece, wanted[index] ?? piece, request.printer, kernel));
  const found = applyAcceptance(
    built.flatMap((one) => one.diagnostics),
    request.accept,
    request.family,
  );
  return { request, design, hash, pieces: built.map(({ made }) => made), diagnostics: [...diagnostics, ...found] };
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

function buildPiece(
  piece: Piece,
  wanted: Piece,
  printer: Printer,
  kernel: Kernel,
): { made: MadePiece; diagnostics: Diagnostic[] } {
  return kernel.build(piece.solid, (body) => {
    const raw = body.mesh();
    const mesh = printMesh(raw, shrinkScale(printer));
    const { measures, diagnostics } = inspect(mesh, {
      line: printer.line,
      layer: printer.layer,
      bridgeComfort: printer.bridgeComfort,
      bridgeLimit: printer.bridgeLimit,
      bed: { x: printer.bedX, y: printer.bedY, z: printer.bedZ },
      wallError: piece.wall.error,
      wallWarn: piece.wall.warning,
      sampleDensity: WALL_SAMPLES,
      thinOnPurpose: membranesOf(piece, raw, printer),
    });
    const fit =
      wanted === piece
        ? verifyPiece(piece, body, raw)
        : kernel.build(wanted.solid, (printed) => verifyPiece(wanted, printed, printed.mesh()));
    return { made: { piece, mesh, measures, fit }, diagnostics: [...diagnostics, ...fit.diagnostics] };
  });
}

/** Returns the rooms of the piece's membranes, moved to where the printed mesh has them. */
function membranesOf({ membranes = [] }: Piece, raw: Mesh, printer: Printer): Region[] {
  const scale = shrinkScale(printer);
  const [dx, dy, dz] = restingPlace(raw, scale);
  const onBed = ([x, y, z]: Vec3): Vec3 => [x * scale + dx, y * scale + dy, z + dz];
  return membranes.map(({ min, max }) => boxRegion(onBed(min), onBed(max)));
}

/** Returns the short hash of what was asked: family, parameters and printer, whatever the file is called. */
export function hashOf({ family, parameters, printer }: Request): string {
  return shortHash({ format: 1, part: family.name, parameters, printer });
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
