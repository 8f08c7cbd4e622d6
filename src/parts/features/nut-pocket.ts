import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Box } from "../../geometry/mesh.ts";
import { hexagon, hullOf, type Profile, placed, polygon, rectangle, without } from "../../geometry/profile.ts";
import { prism, type Solid } from "../../geometry/solid.ts";
import { outsideFace } from "../../printing/compensation.ts";
import { wanted } from "../../printing/fits.ts";
import type { Printer } from "../../printing/printer.ts";
import type { KeepOut } from "../piece.ts";

/** How far the bumps at the mouth stand in, so that the nut stays when the bolt is backed off, mm. */
const BUMP = 0.15;
const BUMP_LENGTH = 1;
/** Play behind the nut's corner, mm. */
const BEHIND = 0.125;

/** Returns the modelled distance between two flat walls that face each other: each grows into the gap. mm. */
export function betweenFlats(gap: number, printer: Printer): number {
  return gap - 2 * outsideFace(0, printer);
}

/** A pocket into which a nut is pushed from the side, and in which it slides along. Sizes in mm. */
export interface NutPocket {
  readonly acrossFlats: number;
  readonly nutHeight: number;
  /** How far the nut slides each way from the origin. */
  readonly excursion: number;
  /** Heights of the pocket's roof, which takes the pull, and of its floor. */
  readonly roof: number;
  readonly floor: number;
  /** Which way the pocket opens, degrees from +x. */
  readonly towards: number;
  /** How far the mouth lies from the origin at least. */
  readonly mouth: number;
}

export interface CaptiveNut {
  readonly cut: Solid;
  readonly keepOut: KeepOut;
  /** Half the modelled width, for what must stay beside the pocket. */
  readonly half: number;
}

/**
 * Returns the cut of a side-slot nut pocket through the origin and the nut's own space over its whole slide. Two flats
 * of the nut lie along the slide, so it cannot turn. Ridges of 0.15 mm beyond the slide keep it in.
 */
export function nutPocket(pocket: NutPocket, printer: Printer): CaptiveNut {
  const { acrossFlats, nutHeight, excursion, roof, floor, towards, mouth } = pocket;
  const half = betweenFlats(wanted(acrossFlats, "sideSlotWidth"), printer) / 2;
  const corner = acrossFlats / 2 / cosDeg(30);
  const ridge = corner + excursion + BEHIND + BUMP_LENGTH / 2;
  const outline = without(
    rectangle(-(corner + BEHIND + excursion), -half, mouth, half),
    bump(ridge, half, 1),
    bump(ridge, half, -1),
  );
  const at = (slide: number) => placed(hexagon(acrossFlats, [slide, 0]), [0, 0], towards);
  return {
    half,
    cut: prism(placed(outline, [0, 0], towards), floor, roof),
    keepOut: {
      name: "captive nut",
      body: prism(hullOf(at(-excursion), at(excursion)), roof - nutHeight, roof),
    },
  };
}

/** A low ridge with sloping ends on one side wall. */
function bump(at: number, half: number, side: 1 | -1): Profile {
  const points = [
    [at - BUMP_LENGTH / 2, half + 1],
    [at - BUMP_LENGTH / 2, half],
    [at - 0.1, half - BUMP],
    [at + 0.1, half - BUMP],
    [at + BUMP_LENGTH / 2, half],
    [at + BUMP_LENGTH / 2, half + 1],
  ] as const;
  return polygon(side === 1 ? points : points.map(([x, y]) => [x, -y] as const).reverse());
}

/** Returns the room of a membrane that closes an opening in a pocket's roof, for the search for thin walls. */
export function membraneRoom(width: number, length: number, angle: number, z0: number, z1: number): Box {
  const x = (length / 2) * Math.abs(cosDeg(angle)) + (width / 2) * Math.abs(sinDeg(angle)) + 0.5;
  const y = (length / 2) * Math.abs(sinDeg(angle)) + (width / 2) * Math.abs(cosDeg(angle)) + 0.5;
  return { min: [-x, -y, z0 - 0.05], max: [x, y, z1 + 0.05] };
}
