import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { Piece } from "../parts/piece.ts";
import type { Printer } from "../printing/printer.ts";
import { type Fit, verifyPiece } from "./verify-piece.ts";

/** One body to build and verify: plain data, so that it can be done on any thread. */
export interface PieceWork {
  readonly piece: Piece;
  /** The piece as it comes out of the printer, where that is not as it is drawn. */
  readonly wanted: Piece | undefined;
  readonly printer: Printer;
}

/** What the kernel makes of a body: plain data, so that it can be made on any thread. */
export interface Carved {
  /** The mesh as it is drawn. */
  readonly mesh: Mesh;
  readonly fit: Fit;
}

/** Evaluates a body and compares it with its hardware: all that needs the kernel. */
export function carve({ piece, wanted }: PieceWork, kernel: Kernel): Carved {
  return kernel.build(piece.solid, (body) => {
    const mesh = body.mesh();
    const fit =
      wanted === undefined
        ? verifyPiece(piece, body, mesh)
        : kernel.build(wanted.solid, (printed) => verifyPiece(wanted, printed, printed.mesh()));
    return { mesh, fit };
  });
}
