import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { stretchToOutline } from "../plan.ts";
import { BACK_PLATE, barBoxes, hasBackPlate, plateBoxes, type Tower } from "../surroundings.ts";
import type { Bridge, Posts } from "./bridge.ts";
import type { Corner } from "./corner.ts";
import { type Extents, extentsOf } from "./extents.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";
import { type KeyPath, keyPathOf } from "./key-path.ts";
import type { Service } from "./service.ts";
import type { Stack } from "./stack.ts";

/** One gap between something that turns or runs and something that stands. */
export interface Gap {
  readonly what: string;
  readonly gap: number;
}

export interface Clearances extends Extents, KeyPath {
  readonly clearance: number;
  /** The narrowest gap in words. */
  readonly closest: string;
}

/** A belt span as it leaves the pulley: where it is tangent, where it is 60 mm on. At the middle of the belt. */
export interface Span {
  readonly name: string;
  readonly azimuth: number;
  readonly from: Vec2;
  readonly to: Vec2;
}

/** How far out a belt span is looked at, mm. */
export const SPAN_LENGTH = 60;

export type Foot = Posts & Housing & Fixing & Stack & Corner & Bridge & Service;

/** Returns the gaps round the pulley and the belt, the way of the key to the set screw, and the part's size. mm. */
export function clearancesOf(given: Parameters, bought: Bought, foot: Foot): Clearances {
  const gaps = gapsOf(given, bought, foot);
  const closest = gaps.reduce((best, each) => (each.gap < best.gap ? each : best));
  return {
    clearance: closest.gap,
    closest: closest.what,
    ...keyPathOf(given, bought, foot, hasWall(given)),
    ...extentsOf(given, bought, foot),
  };
}

/** Returns the belt spans in plan. */
export function spansOf(given: Parameters, { belt }: Bought, beltRadius: number): Span[] {
  const radius = beltRadius - belt.thickness / 2;
  return given.beltSpans.map(({ azimuth, side }) => {
    const touch = azimuth + (side === "right" ? -90 : 90);
    const from: Vec2 = [radius * cosDeg(touch), radius * sinDeg(touch)];
    const to: Vec2 = [from[0] + SPAN_LENGTH * cosDeg(azimuth), from[1] + SPAN_LENGTH * sinDeg(azimuth)];
    return { name: `belt span at ${azimuth} deg`, azimuth, from, to };
  });
}

function gapsOf(given: Parameters, bought: Bought, foot: Foot): Gap[] {
  const spans = spansOf(given, bought, foot.beltRadius);
  const half = bought.belt.thickness / 2;
  const belowBelt = foot.plane - given.beltWidth / 2;
  const passing = ({ name, outline, top }: Tower): Gap[] =>
    spans.map((span) => ({
      what: `${span.name} and the ${name}`,
      gap: Math.max(stretchToOutline(span.from, span.to, outline) - half, belowBelt - top),
    }));
  const walled = hasWall(given);
  const towers = [
    ...barBoxes(given, bought, foot),
    ...plateBoxes(given, bought, foot).filter(({ name }) => !walled || name !== BACK_PLATE),
  ];
  return [...turning(given, bought, foot), ...towers.flatMap(passing), ...postGaps(spans, half, foot)];
}

export function hasWall(given: Parameters): boolean {
  return given.style === "walled" && hasBackPlate(given.mount);
}

/** The pulley and the belt on it against the mating faces, or the walls that stand on them. */
function turning(
  given: Parameters,
  { pulley, collar }: Bought,
  { axis, axisB, plate, beltRadius, pulleyRadius }: Foot,
): Gap[] {
  const thing = hasWall(given) ? "wall" : "bar";
  const thick = hasWall(given) ? plate : 0;
  const round = [
    { name: "pulley flange", radius: pulleyRadius },
    { name: "pulley hub", radius: pulley.hubDiameter / 2 },
    { name: "belt on the pulley", radius: beltRadius },
    ...(given.thrust === "collar" ? [{ name: "clamp collar", radius: collar.outside / 2 }] : []),
  ];
  const offsets = given.mount === "on-top" ? [] : given.mount === "in-corner" ? [axis, axisB] : [axis];
  const free = { what: "pulley and nothing beside it", gap: 99 };
  return [
    free,
    ...offsets.flatMap((offset) =>
      round.map(({ name, radius }) => ({ what: `${name} and the ${thing}`, gap: offset - thick - radius })),
    ),
  ];
}

function postGaps(spans: readonly Span[], half: number, { posts, turningRadius }: Foot): Gap[] {
  return posts.flatMap(({ section, azimuth }) => [
    {
      what: `pulley or collar and the post at ${azimuth} deg`,
      gap: stretchToOutline([0, 0], [0, 0], section) - turningRadius,
    },
    ...spans.map(({ name, from, to }) => ({
      what: `${name} and the post at ${azimuth} deg`,
      gap: stretchToOutline(from, to, section) - half,
    })),
  ]);
}
