import { lettering, letteringWidth } from "../../geometry/lettering.ts";
import { laid, moved, type Solid, turned } from "../../geometry/solid.ts";
import { ENGRAVING_DEPTH } from "./engraving.ts";

const SIZES = [6, 5.5, 5, 4.5, 4, 3.5];
const PROUD = 1;

/** Returns the tallest text height that fits the room, in mm; undefined when none does. */
export function textHeight(text: string, width: number, height: number): number | undefined {
  return SIZES.find((tall) => tall <= height && letteringWidth(text, tall) <= width);
}

/**
 * Returns text cut into a round upright wall of `radius` about the z axis, 0.4 mm deep everywhere, centred on `azimuth`
 * (degrees) and height `z`, for a reader who stands outside. Nothing if it cannot fit `room` (width, height), mm.
 */
export function engraveRound(
  text: string,
  radius: number,
  azimuth: number,
  z: number,
  room: readonly [number, number],
): Solid[] {
  const height = textHeight(text, room[0], room[1]);
  const profile = height === undefined ? undefined : lettering(text, height);
  if (profile === undefined) return [];
  const letters = laid(profile, radius - ENGRAVING_DEPTH, ENGRAVING_DEPTH + PROUD);
  return [moved(turned(letters, "z", azimuth), [0, 0, z])];
}
