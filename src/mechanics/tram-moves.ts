import type { Refusal } from "../core/calculation.ts";
import { brief } from "./bounded.ts";
import type { Point } from "./point.ts";
import { planeHeight, type TramPlane } from "./tram-plane.ts";

export interface TramMount extends Point {
  readonly name: string;
  /** Thread pitch of its bolt, mm per turn. */
  readonly pitch: number;
  /** How far it can still rise and sink, mm. */
  readonly up: number;
  readonly down: number;
}

export interface TramMove {
  readonly name: string;
  /** Height to add at this mount, mm; negative lowers. */
  readonly move: number;
  /** Turns of the part seen from its own outer face; clockwise is positive and lowers. */
  readonly clockwise: number;
}

const GUARD = 1e-9;

/**
 * Returns what each mount must do so that the plate lies level with the fixed mount, which stays.
 *
 * Units: mm and turns, right-hand threads: turning clockwise, seen from the part's own outer face, shortens the stack
 * and lowers the plate. Refuses an unknown fixed mount and a move beyond a mount's remaining range. Source: geometry.
 */
export function tramMoves(
  plane: TramPlane,
  mounts: readonly TramMount[],
  fixed: string,
): readonly TramMove[] | Refusal {
  const still = mounts.find(({ name }) => name === fixed);
  if (still === undefined) return { refused: `there is no mount ${fixed}` };
  const level = planeHeight(plane, still);
  const moves: TramMove[] = [];
  for (const mount of mounts) {
    if (!(mount.pitch > 0)) return { refused: `the pitch of mount ${mount.name} must be above 0 mm` };
    const move = level - planeHeight(plane, mount);
    const beyond = Math.max(move - mount.up, -move - mount.down);
    if (Number.isNaN(beyond)) return { refused: `a height or range of mount ${mount.name} is not a number` };
    if (!(beyond <= GUARD)) {
      return { refused: `mount ${mount.name} would have to move ${brief(move)} mm, ${brief(beyond)} beyond its range` };
    }
    moves.push({ name: mount.name, move, clockwise: move === 0 ? 0 : -move / mount.pitch });
  }
  return moves;
}
