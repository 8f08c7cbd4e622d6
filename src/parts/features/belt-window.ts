import type { Vec2 } from "../../geometry/mesh.ts";
import { polygon } from "../../geometry/profile.ts";
import { alongX, moved, type Solid, turned } from "../../geometry/solid.ts";

/** An opening for one belt span through a wall. mm, degrees. */
export interface BeltWindow {
  /** Where the span leaves its pulley, which way, and how far the opening runs. */
  readonly from: Vec2;
  readonly azimuth: number;
  readonly length: number;
  /** Middle of the belt, width across the span, height along the axis. */
  readonly plane: number;
  readonly across: number;
  readonly high: number;
  /** Height of the roof over the flat top: 0 where the printer can bridge the opening. */
  readonly gable: number;
  /** Top of the wall: an opening that would leave only a thin bar there runs out through it. */
  readonly wallTop: number;
}

/** A bar of plastic over an opening thinner than this is left out, mm. */
const THINNEST_LINTEL = 3;
const OVERRUN = 1;

/** Returns the tool that cuts the opening. */
export function beltWindow({ from, azimuth, length, plane, across, high, gable, wallTop }: BeltWindow): Solid {
  const half = across / 2;
  const [low, top] = [plane - high / 2, plane + high / 2];
  const open = top + gable > wallTop - THINNEST_LINTEL;
  const roof: Vec2[] = open
    ? [
        [half, Math.max(wallTop, top) + OVERRUN],
        [-half, Math.max(wallTop, top) + OVERRUN],
      ]
    : [[half, top], ...(gable > 0 ? [[0, top + gable] as const] : []), [-half, top]];
  const house = polygon([[-half, low], [half, low], ...roof]);
  return moved(turned(alongX(house, 0, length), "z", azimuth), [from[0], from[1], 0]);
}
