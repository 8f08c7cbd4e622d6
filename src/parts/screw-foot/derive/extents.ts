import type { Vec2 } from "../../../geometry/mesh.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { circlePoints } from "../plan.ts";
import { box, plateBoxes } from "../surroundings.ts";
import type { Bridge, Posts } from "./bridge.ts";
import { CAP } from "./cap.ts";
import type { Corner } from "./corner.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";
import type { Stack } from "./stack.ts";

export interface Extents {
  readonly sizeX: number;
  readonly sizeY: number;
  readonly sizeZ: number;
}

/** Height of the dowel on a post, mm. */
export const DOWEL = { diameter: 6, height: 3, hole: 6.2, deep: 3.2 };
/** A seat this high over the bar gets a wider base and ribs. */
export const TALL_SEAT = 25;
/** Ribs of a tall column: thickness, and where they stand, mm and degrees. */
export const RIBS = { thick: 5, azimuths: [45, 135, 225, 315] };
/** How much wider the base of a tall column is, mm. */
export const BASE_WIDER = 10;

type Foot = Posts & Housing & Fixing & Stack & Corner & Bridge;

/** Returns the size of the foot's own body as it stands on the bed, mm. */
export function extentsOf(given: Parameters, bought: Bought, foot: Foot): Extents {
  const points = planPoints(given, bought, foot);
  const reach = (axis: 0 | 1) =>
    Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]));
  return { sizeX: reach(0), sizeY: reach(1), sizeZ: topOf(given, foot) - foot.bed };
}

/** Returns the radius of an on-top base: wider under a tall column. */
export function baseRadius({ housing, seat }: Housing & Stack): number {
  return seat > TALL_SEAT ? housing + BASE_WIDER : housing;
}

/** Returns the centres of the two mount bolts of an upright mount. */
export function uprightBolts(
  { mount, offset }: Parameters,
  { bar }: Bought,
  { boltX, axis }: Housing & Fixing,
): Vec2[] {
  const y = mount === "under" ? -axis - bar.width / 2 : -offset;
  return [
    [-boltX, y],
    [boltX, y],
  ];
}

function planPoints(given: Parameters, bought: Bought, foot: Foot): Vec2[] {
  const { housing, axis, plate, posts } = foot;
  const points: Vec2[] = [
    ...circlePoints([0, 0], given.mount === "on-top" ? baseRadius(foot) : housing),
    ...posts.flatMap(({ section }) => section),
    ...plateBoxes(given, bought, foot).flatMap(({ outline }) => outline),
  ];
  if (given.cap) points.push(...CAP.azimuths.flatMap((azimuth) => lobe(foot.pocket, azimuth)));
  if (given.mount === "on-top" || given.mount === "under") {
    const around = bought.bolt.washerDiameter / 2 + 3;
    points.push(...uprightBolts(given, bought, foot).flatMap((centre) => circlePoints(centre, around)));
  } else if (given.mount === "on-side" && given.locate !== "none") points.push([0, -axis - 1.2]);
  if (given.mount === "on-post") points.push(...box(-housing, -axis, housing, -axis + plate));
  return points;
}

/** Returns points on the outline of one lobe that holds an insert of the cap. */
function lobe(pocket: number, azimuth: number): Vec2[] {
  const [radius, angle] = [(pocket + CAP.screwsOff) / 2, (azimuth * Math.PI) / 180];
  return circlePoints([radius * Math.cos(angle), radius * Math.sin(angle)], CAP.lobe);
}

function topOf(given: Parameters, { rim, plateTop, postTop, bed, margin, boltsApart }: Foot): number {
  const cheeks = given.mount === "on-post" ? bed + 2 * margin + boltsApart : rim;
  const plates = given.mount === "on-side" || given.mount === "in-corner" ? plateTop : rim;
  if (given.style === "bridged") return Math.max(postTop + DOWEL.height, cheeks, plates);
  return Math.max(rim, cheeks, plates, given.style === "walled" ? postTop : rim);
}
