import { isRefusal } from "../../../core/calculation.ts";
import { cosDeg, down, sinDeg, tidy, up } from "../../../core/rounding.ts";
import { pitchRadius } from "../../../mechanics/pitch-radius.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { type Fit, wanted } from "../../../printing/fits.ts";
import type { Printer } from "../../../printing/printer.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { POST, type Posts, postReach } from "./bridge.ts";
import { CAP_AIR, lobeReach } from "./cap.ts";

export interface Housing {
  readonly pocket: number;
  readonly pocketModelled: number;
  readonly pocketDepth: number;
  readonly housing: number;
  readonly shoulder: number;
  readonly shoulderModelled: number;
  readonly ring: number;
  readonly relief: number;
  readonly pitchRadius: number;
  readonly beltRadius: number;
  readonly plate: number;
  readonly axis: number;
  readonly axisB: number;
}

const FIT_OF: Readonly<Record<Parameters["pocketFit"], Fit>> = { "drop-in": "dropIn", push: "push", press: "press" };
/** The bearing stands this much proud, so that the rim cannot reach the washer. */
const PROUD = 0.3;
/** What the relief groove is wider than the ring's corner radius, mm. */
export const RELIEF = { wider: 0.3, deep: 0.4 };
/** Offsets of the axis are whole steps, mm. */
const STEP = 0.5;

/** Returns the diameter that the bearing's pocket shall have when it is printed. */
export function pocketOf({ pocketFit }: Parameters, { bearing }: Bought): number {
  return wanted(bearing.outside, FIT_OF[pocketFit]);
}

/** Returns the bearing's housing and how far its axis stands off the bar. */
export function housingOf(given: Parameters, bought: Bought, posts: Posts, printer: Printer): Housing {
  const { bearing } = bought;
  const pocket = pocketOf(given, bought);
  const housing = pocket / 2 + given.wall;
  const shoulder = given.shoulderBore ?? up(bearing.outerLand, 0.1);
  const radii = { housing, pocket, ...pulleyRadii(bought) };
  const plate = given.plate ?? usualPlate(given, bought);
  const { axis, axisB } = axes(given, radii, posts, plate);
  return {
    ...radii,
    pocketModelled: uprightHole(pocket, printer),
    pocketDepth: Math.max(printer.layer, down(given.pocketDepth ?? bearing.width - PROUD, printer.layer)),
    shoulder,
    shoulderModelled: uprightHole(shoulder, printer),
    ring: (pocket - shoulder) / 2,
    relief: bearing.cornerRadius + RELIEF.wider,
    plate,
    axis,
    axisB,
  };
}

function pulleyRadii({ pulley, belt }: Bought) {
  const outcome = pitchRadius.compute({ teeth: pulley.teeth, pitch: pulley.pitch });
  const radius = isRefusal(outcome) ? (pulley.teeth * pulley.pitch) / (2 * Math.PI) : outcome.radius;
  return { pitchRadius: radius, beltRadius: radius + belt.thickness - belt.toothHeight - belt.pitchLineDistance };
}

/** The plates that take a stock bolt without a counterbore; the base below a bar is thicker, since it bends. */
function usualPlate({ mount }: Parameters, { bolt }: Bought): number {
  if (mount === "under") return bolt.thread === "M6" ? 9 : 10;
  return bolt.thread === "M6" ? 8 : 6;
}

interface Radii {
  readonly housing: number;
  readonly pocket: number;
  readonly beltRadius: number;
}

function axes(given: Parameters, radii: Radii, posts: Posts, plate: number): { axis: number; axisB: number } {
  const { mount, cornerAngle } = given;
  if (mount === "on-top") return { axis: 0, axisB: 0 };
  const axis = given.axisOffset ?? offsetTowards(270, given, radii, posts, plate);
  const second = given.axisOffsetB ?? offsetTowards(cornerAngle + 90, given, radii, posts, plate);
  return { axis, axisB: mount === "in-corner" ? second : 0 };
}

/** The offset from a face that lies in a direction: room for what turns, for posts and for the lobes of a cap. */
function offsetTowards(azimuth: number, given: Parameters, radii: Radii, posts: Posts, plate: number): number {
  const air = given.mount === "under" ? STEP : 0;
  const reach = postReach(posts.posts, [cosDeg(azimuth), sinDeg(azimuth)]) + air;
  const lobes = given.cap ? lobeReach(radii.pocket, azimuth) + air : 0;
  return up(tidy(Math.max(ownOffset(given, radii, posts, plate, lobes), reach, lobes)), STEP);
}

/** The offset before rounding: room for housing, flange and belt, behind them the wall or the posts of a bridge. */
function ownOffset(given: Parameters, radii: Radii, posts: Posts, plate: number, lobes: number): number {
  const { housing, pocket, beltRadius } = radii;
  const open = Math.max(housing + 0.5, posts.turningRadius + 3, beltRadius + 3);
  if (given.style === "walled") {
    // The bearing goes in past the wall, and so does its cap.
    const wayIn = given.cap ? Math.max(housing, lobes) + CAP_AIR : pocket / 2 + 1;
    return Math.max(open, plate + Math.max(posts.turningRadius + 2, beltRadius + 3, wayIn));
  }
  return given.style === "bridged" ? Math.max(open, posts.postRadius + POST.radial / 2) : open;
}
