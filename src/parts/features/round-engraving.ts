import { lettering, letteringWidth } from "../../geometry/lettering.ts";
import { polygon } from "../../geometry/profile.ts";
import { ring } from "../../geometry/segments.ts";
import { alongY, carve, moved, prism, type Solid, turned } from "../../geometry/solid.ts";
import { ENGRAVING_DEPTH } from "./engraving.ts";

const SIZES = [6, 5.5, 5, 4.5, 4, 3.5];
const PROUD = 1;
/** Sides of the round floor of the letters: it only has to look round, and every side cuts through every letter. */
const FLOOR = 40;

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
  if (profile === undefined || height === undefined) return [];
  // Seen from outside the text runs from right to left along x.
  const seen: Solid = {
    kind: "placed",
    of: alongY(profile, 0, radius + PROUD),
    placement: [-1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0],
  };
  const skin = carve(seen, [prism(polygon(ring(radius - ENGRAVING_DEPTH, FLOOR)), -height, height)]);
  return [moved(turned(skin, "z", azimuth - 90), [0, 0, z])];
}
