import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { Piece } from "../parts/piece.ts";
import type { Printer } from "../printing/printer.ts";
import { type Entered, enteredKeepOuts } from "./fit.ts";

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
  /** The mesh as it comes out of the printer, where that is not as it is drawn. */
  readonly printed: Mesh | undefined;
  readonly entered: Entered;
}

/** Evaluates a body and compares it with its keep-outs: all that needs the kernel. */
export function carve({ piece, wanted }: PieceWork, kernel: Kernel): Carved {
  return kernel.build(piece.solid, (body) => {
    const mesh = body.mesh();
    if (wanted === undefined) return { mesh, printed: undefined, entered: enteredKeepOuts(piece, body) };
    return kernel.build(wanted.solid, (printed) => ({
      mesh,
      printed: printed.mesh(),
      entered: enteredKeepOuts(wanted, printed),
    }));
  });
}
