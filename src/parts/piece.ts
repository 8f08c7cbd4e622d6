import type { Box, Vec3 } from "../geometry/mesh.ts";
import type { Solid } from "../geometry/solid.ts";

/** Space that a piece of hardware, or its movement, needs: nothing printed may be there. */
export interface KeepOut {
  /** What is there, as a person would say it: `40-tooth pulley`, `hex key to the set screw`. */
  readonly name: string;
  /** The body at the clearance that is an error to enter. */
  readonly body: Solid;
  /** The larger body that is a warning to enter; absent when there is no such limit. */
  readonly roomy?: Solid;
  /** A head, washer or nut at its own size, which is there in the assembled machine: not the way to it. */
  readonly fastener?: true;
}

/** A face that must really touch: how much of it is drawn, and where to look for it on the finished mesh. */
export interface Contact {
  readonly name: string;
  /** Drawn area in mm2, holes and slots already taken off. */
  readonly area: number;
  /** The plane, in the frame of the piece: a point on it and the outward normal of the printed face. */
  readonly point: Vec3;
  readonly normal: Vec3;
  /** Only what lies inside the cube of this half size round `point` counts, mm. */
  readonly reach: number;
}

/** Something to check with calipers after printing. */
export interface Measure {
  readonly what: string;
  /** Expected size in mm. */
  readonly expected: number;
  readonly tolerance: number;
}

/** One body to print. */
export interface Piece {
  /** File suffix, empty for the main piece: `bridge`. */
  readonly name: string;
  readonly title: string;
  /** In the assembled frame, print-up being +z; it is dropped to the bed and centred when it is written. */
  readonly solid: Solid;
  readonly count: number;
  readonly keepOuts: readonly KeepOut[];
  readonly contacts: readonly Contact[];
  readonly measures: readonly Measure[];
  /** Rooms where the part is thin on purpose: a membrane that is pierced at assembly. */
  readonly membranes?: readonly Box[];
  /** The thinnest wall allowed in mm: below `error` nothing is written, below `warning` it is said. */
  readonly wall: { readonly error: number; readonly warning: number };
}

/** Returns what stands for the solids of a part: equal text, equal bodies, as often. */
export function shapeOf(pieces: readonly Piece[]): string {
  return JSON.stringify(pieces.map(({ name, solid, count }) => [name, solid, count]));
}
