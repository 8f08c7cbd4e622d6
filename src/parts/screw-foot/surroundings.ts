import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import type { Bought } from "./bought.ts";
import type { Corner } from "./derive/corner.ts";
import type { Fixing } from "./derive/fixing.ts";
import type { Housing } from "./derive/housing.ts";
import type { Stack } from "./derive/stack.ts";
import type { Parameters } from "./parameters.ts";

/** Something upright-sided that stands from below up to a height: an outline in plan and its top. mm. */
export interface Tower {
  readonly name: string;
  /** Convex, counter-clockwise. */
  readonly outline: readonly Vec2[];
  readonly top: number;
}

/** The plate from which a wall rises: in a walled foot belts have windows through it. */
export const BACK_PLATE = "back plate";
/** How far bars reach past the foot, mm. */
const FAR = 300;
/** Play between an upright bar and the plates that embrace it, per side, mm. */
export const CHEEK_PLAY = 0.1;

type Foot = Housing & Fixing & Stack & Corner;

/** Returns whether the mount has a plate that stands behind the axis, on which a wall can rise. */
export function hasBackPlate(mount: Parameters["mount"]): boolean {
  return mount !== "on-top" && mount !== "under";
}

export function box(x0: number, y0: number, x1: number, y1: number): Vec2[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** Returns half the width of a wall; round an upright bar the whole front plate goes on upwards. */
export function wallHalf({ mount }: Parameters, { bar }: Bought, { besides, plate }: Housing & Fixing): number {
  return mount === "on-post" ? bar.width / 2 + CHEEK_PLAY + plate : besides;
}

/** Returns what maps the frame of a straight bar (x along it, y away from it) to the second bar of a corner. */
export function alongSecondBar(gamma: number): (point: Vec2) => Vec2 {
  const [c, s] = [cosDeg(gamma), sinDeg(gamma)];
  return ([x, y]) => [x * c + y * s, x * s - y * c];
}

/** Returns the bars in plan. */
export function barBoxes(given: Parameters, { bar }: Bought, { axis, axisB }: Foot): Tower[] {
  const level = { name: "bar", top: 0 };
  switch (given.mount) {
    case "on-top": {
      const middle = -given.offset;
      return [{ ...level, outline: box(-FAR, middle - bar.width / 2, FAR, middle + bar.width / 2) }];
    }
    case "on-post":
      return [
        { name: "upright bar", top: 1e4, outline: box(-bar.width / 2, -axis - bar.height, bar.width / 2, -axis) },
      ];
    case "in-corner": {
      const second = box(-FAR, -axisB - bar.width, FAR, -axisB)
        .map(alongSecondBar(given.cornerAngle))
        .reverse();
      return [
        { ...level, outline: box(-FAR, -axis - bar.width, FAR, -axis) },
        { ...level, name: "second bar", outline: second },
      ];
    }
    default:
      return [{ ...level, outline: box(-FAR, -axis - bar.width, FAR, -axis) }];
  }
}

/** Returns the plates that stand beside the housing, each with its top. */
export function plateBoxes(given: Parameters, { bar }: Bought, foot: Foot): Tower[] {
  const { axis, axisB, plate, plateHalf, plateTop, margin, bed, boltsApart } = foot;
  const plates = { name: BACK_PLATE, top: plateTop };
  switch (given.mount) {
    case "on-side":
      return [{ ...plates, outline: box(-plateHalf, -axis, plateHalf, -axis + plate) }];
    case "in-corner": {
      const first = box(-foot.cornerToAxis, -axis, foot.plateLength - foot.cornerToAxis, -axis + plate);
      const other = box(-foot.cornerToAxisB, -axisB, foot.plateLengthB - foot.cornerToAxisB, -axisB + plate);
      const second = other.map(alongSecondBar(given.cornerAngle)).reverse();
      return [
        { ...plates, outline: first },
        { ...plates, outline: second },
      ];
    }
    case "on-post": {
      const outside = bar.width / 2 + CHEEK_PLAY + plate;
      const top = bed + 2 * margin + boltsApart;
      return [{ name: "cheeks", top, outline: box(-outside, -axis - bar.module / 2 - margin, outside, -axis) }];
    }
    default:
      return [];
  }
}
