import type { Vec2 } from "../../geometry/mesh.ts";
import { polygon } from "../../geometry/profile.ts";
import { alongY, type Solid } from "../../geometry/solid.ts";

/** An opening through a wall that stands along x. mm. */
export interface BeltWindow {
  /** Along the wall, and through it. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Floor and flat top. */
  readonly z: readonly [number, number];
  /** Height of the roof over the flat top: 0 where the printer can bridge the opening. */
  readonly gable: number;
  /** Top of the wall. */
  readonly wallTop: number;
  /** Whether it runs out through the wall's top: where it reaches an end of the wall, nothing would carry a roof. */
  readonly open: boolean;
}

/** A bar of plastic over an opening thinner than this is left out, mm. */
const THINNEST_LINTEL = 3;
const OVERRUN = 1;

/** Returns the tool that cuts the opening: its sides are square to the wall, so that no edge is left sharp. */
export function beltWindow({ x, y, z, gable, wallTop, open }: BeltWindow): Solid {
  const [[left, right], [low, top]] = [x, z];
  const roof: Vec2[] =
    open || top + gable > wallTop - THINNEST_LINTEL
      ? [
          [right, Math.max(wallTop, top) + OVERRUN],
          [left, Math.max(wallTop, top) + OVERRUN],
        ]
      : [[right, top], ...(gable > 0 ? [[(left + right) / 2, top + gable] as const] : []), [left, top]];
  return alongY(polygon([[left, low], [right, low], ...roof]), y[0] - OVERRUN, y[1] + OVERRUN);
}
