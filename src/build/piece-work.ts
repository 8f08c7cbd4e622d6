import type { Diagnostic } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import { printMesh, restingPlace } from "../geometry/print-mesh.ts";
import type { Piece } from "../parts/piece.ts";
import { shrinkScale } from "../printing/compensation.ts";
import type { Printer } from "../printing/printer.ts";
import { inspect, type Measures } from "../verify/inspect.ts";
import { boxRegion, type Region } from "../verify/region.ts";
import { type Carved, carve, type PieceWork } from "./carve.ts";
import { type Fit, fitOf } from "./fit.ts";

/** Samples per mm2 of surface in the search for thin walls; every facet is sampled at least once. */
const WALL_SAMPLES = 0.2;

/** What came of a body. */
export interface PieceResult {
  /** The mesh as printed: on the bed, centred, on the grid of the file. */
  readonly mesh: Mesh;
  readonly measures: Measures;
  readonly fit: Fit;
  readonly diagnostics: readonly Diagnostic[];
}

/** Returns the finished mesh of a body, with what was measured on it and everything that is wrong with it. */
export function inspected({ piece, wanted, printer }: PieceWork, carved: Carved): PieceResult {
  const raw = carved.mesh;
  const fit = fitOf(wanted ?? piece, carved.printed ?? raw, carved.entered);
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
  return { mesh, measures, fit, diagnostics: [...diagnostics, ...fit.diagnostics] };
}

/** Builds and verifies a body. */
export const pieceResult = (work: PieceWork, kernel: Kernel): PieceResult => inspected(work, carve(work, kernel));

/** Returns the rooms of the piece's membranes, moved to where the printed mesh has them. */
function membranesOf({ membranes = [] }: Piece, raw: Mesh, printer: Printer): Region[] {
  const scale = shrinkScale(printer);
  const [dx, dy, dz] = restingPlace(raw, scale);
  const onBed = ([x, y, z]: Vec3): Vec3 => [x * scale + dx, y * scale + dy, z + dz];
  return membranes.map(({ min, max }) => boxRegion(onBed(min), onBed(max)));
}
