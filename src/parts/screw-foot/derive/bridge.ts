import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import { layerAbove } from "../../../printing/layers.ts";
import type { Printer } from "../../../printing/printer.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { CAP, CAP_AIR, lobeReach } from "./cap.ts";

/** One upright that carries the bridge. */
export interface Post {
  readonly azimuth: number;
  readonly centre: Vec2;
  /** Its section in plan, counter-clockwise. */
  readonly section: readonly Vec2[];
}

export interface Posts {
  /** Empty unless the foot is bridged. */
  readonly posts: readonly Post[];
  readonly pulleyRadius: number;
  /** The widest thing that turns: flange, hub or clamp collar. */
  readonly turningRadius: number;
  readonly postRadius: number;
}

export interface Bridge {
  readonly postTop: number;
  readonly bridgeThickness: number;
  readonly bridgeSeat: number;
}

/** Section of a post, how far its centre stands from the flange, and its inner face from the bearing's pocket, mm. */
export const POST = { radial: 12, tangential: 28, off: 8, offPocket: 1.6 };
/** Least thickness of the bridge and least floor under its bearing, mm. */
const BRIDGE = { least: 8, floor: 3 };
/** Free height over the pulley, mm. */
export const OVER_PULLEY = 3;

/** Returns the posts of a bridge in plan: at the tangent points, where no belt runs. `pocket` is the bearing's. */
export function postsOf(given: Parameters, { pulley, collar }: Bought, pocket: number): Posts {
  const pulleyRadius = pulley.flangeDiameter / 2;
  const collarRadius = given.thrust === "collar" ? collar.outside / 2 : 0;
  const turningRadius = Math.max(pulleyRadius, pulley.hubDiameter / 2, collarRadius);
  const inner = given.cap
    ? Math.max(pocket / 2 + given.wall, lobeReach(pocket, CAP.azimuths[0] ?? 90)) + CAP_AIR
    : pocket / 2 + POST.offPocket;
  const postRadius = Math.max(turningRadius + POST.off, inner + POST.radial / 2);
  const azimuths = given.style === "bridged" ? (given.postAzimuths ?? tangentAzimuths(given)) : [];
  return { pulleyRadius, turningRadius, postRadius, posts: azimuths.map((azimuth) => postAt(azimuth, postRadius)) };
}

/** A right span touches the pulley 90 degrees behind its direction, a left one 90 degrees ahead. */
function tangentAzimuths({ beltSpans }: Parameters): number[] {
  const touching = beltSpans.slice(0, 2).map(({ azimuth, side }) => azimuth + (side === "right" ? -90 : 90));
  const [first = 270, second = first] = touching;
  const apart = ((((second - first) % 360) + 540) % 360) - 180;
  if (Math.abs(apart) >= 90) return [whole(first), whole(second)];
  const middle = first + apart / 2;
  return [whole(middle), whole(middle + 180)];
}

const whole = (azimuth: number) => ((azimuth % 360) + 360) % 360;

function postAt(azimuth: number, radius: number): Post {
  const [c, s] = [cosDeg(azimuth), sinDeg(azimuth)];
  const place = (radial: number, across: number): Vec2 => [radial * c - across * s, radial * s + across * c];
  const [near, far, side] = [radius - POST.radial / 2, radius + POST.radial / 2, POST.tangential / 2];
  const section = [place(near, -side), place(far, -side), place(far, side), place(near, side)];
  return { azimuth, centre: place(radius, 0), section };
}

/** Returns how far the posts reach along a direction, mm; 0 without posts. */
export function postReach(posts: readonly Post[], [x, y]: Vec2): number {
  return Math.max(0, ...posts.flatMap(({ section }) => section.map(([px, py]) => px * x + py * y)));
}

/** Returns the heights of the bridge; the same numbers stand for the top of a wall. */
export function bridgeOf(
  _: Bought,
  { pulleyTop, pocketDepth }: { readonly pulleyTop: number; readonly pocketDepth: number },
  printer: Printer,
): Bridge {
  const postTop = pulleyTop + OVER_PULLEY;
  const bridgeThickness = layerAbove(Math.max(BRIDGE.least, pocketDepth + BRIDGE.floor), printer);
  return { postTop, bridgeThickness, bridgeSeat: postTop + bridgeThickness - pocketDepth };
}
