import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { stretchToOutline } from "../plan.ts";
import { barBoxes, hasBackPlate, plateBoxes, type Tower } from "../surroundings.ts";
import type { Bridge, Posts } from "./bridge.ts";
import type { Corner } from "./corner.ts";
import { type Extents, extentsOf } from "./extents.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";
import type { Service } from "./service.ts";
import type { Stack } from "./stack.ts";

/** One gap between something that turns or runs and something that stands. */
export interface Gap {
  readonly what: string;
  readonly gap: number;
}

export interface Clearances extends Extents {
  readonly clearance: number;
  /** The narrowest gap in words. */
  readonly closest: string;
  readonly keyLength: number;
  /** What stands in the key's way; undefined when it is free. */
  readonly keyMeets: string | undefined;
}

/** A belt span as it leaves the pulley: where it is tangent, where it is 60 mm on. At the middle of the belt. */
export interface Span {
  readonly name: string;
  readonly azimuth: number;
  readonly from: Vec2;
  readonly to: Vec2;
}

/** How far out a belt span is looked at, and how far a key must reach, mm. */
export const SPAN_LENGTH = 60;
export const LONGEST_KEY = 80;
/** Diameter of the straight path to a set screw, mm. */
export const KEY_PATH = 5;

export type Foot = Posts & Housing & Fixing & Stack & Corner & Bridge & Service;

/** Returns the gaps round the pulley and the belt, and the way of the key to the set screw. mm. */
export function clearancesOf(given: Parameters, bought: Bought, foot: Foot): Clearances {
  const gaps = gapsOf(given, bought, foot);
  const closest = gaps.reduce((best, each) => (each.gap < best.gap ? each : best));
  return {
    clearance: closest.gap,
    closest: closest.what,
    keyLength: keyLengthOf(given, bought, foot),
    keyMeets: keyMeets(given, bought, foot),
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
  const towers = [...barBoxes(given, bought, foot), ...(walled ? [] : plateBoxes(given, bought, foot))];
  return [...turning(given, bought, foot), ...towers.flatMap(passing), ...postGaps(spans, half, foot)];
}

export function hasWall(given: Parameters): boolean {
  return given.style === "walled" && hasBackPlate(given.mount);
}

/** The pulley and the belt on it against the mating faces, or the walls that stand on them. */
function turning(given: Parameters, { pulley }: Bought, { axis, axisB, plate, beltRadius, pulleyRadius }: Foot): Gap[] {
  const thing = hasWall(given) ? "wall" : "bar";
  const thick = hasWall(given) ? plate : 0;
  const round = [
    { name: "pulley flange", radius: pulleyRadius },
    { name: "pulley hub", radius: pulley.hubDiameter / 2 },
    { name: "belt on the pulley", radius: beltRadius },
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

function postGaps(spans: readonly Span[], half: number, { posts, pulleyRadius }: Foot): Gap[] {
  return posts.flatMap(({ section, azimuth }) => [
    {
      what: `pulley flange and the post at ${azimuth} deg`,
      gap: stretchToOutline([0, 0], [0, 0], section) - pulleyRadius,
    },
    ...spans.map(({ name, from, to }) => ({
      what: `${name} and the post at ${azimuth} deg`,
      gap: stretchToOutline(from, to, section) - half,
    })),
  ]);
}

function keyMeets(given: Parameters, bought: Bought, foot: Foot): string | undefined {
  const { keyAzimuth, framePosts } = given;
  const [c, s] = [cosDeg(keyAzimuth), sinDeg(keyAzimuth)];
  const from = bought.pulley.hubDiameter / 2;
  const to = from + LONGEST_KEY;
  const below = foot.setScrewHeight - KEY_PATH / 2;
  const uprights = framePosts.map(({ x, y, width }): Tower => {
    const half = width / 2;
    const outline: Vec2[] = [
      [x - half, y - half],
      [x + half, y - half],
      [x + half, y + half],
      [x - half, y + half],
    ];
    return { name: "post of the frame", outline, top: 1e4 };
  });
  const met = [...barBoxes(given, bought, foot), ...uprights].find(({ outline, top }) => {
    const gap = stretchToOutline([from * c, from * s], [to * c, to * s], outline);
    return gap < KEY_PATH / 2 - 1e-9 && below < top - 1e-9;
  });
  return met?.name;
}

/** Returns how far the key runs from the hub until it is past the foot's own walls and posts; 0 in free air. */
function keyLengthOf(given: Parameters, bought: Bought, foot: Foot): number {
  const hub = bought.pulley.hubDiameter / 2;
  const direction: Vec2 = [cosDeg(given.keyAzimuth), sinDeg(given.keyAzimuth)];
  const far: Vec2 = [direction[0] * 1000, direction[1] * 1000];
  const walls = hasWall(given) ? wallDistances(given, foot, direction) : [];
  const posts = foot.posts
    .filter(({ section }) => stretchToOutline([0, 0], far, section) < KEY_PATH / 2)
    .map(({ section }) => Math.max(...section.map(([x, y]) => x * direction[0] + y * direction[1])));
  return Math.max(0, ...[...walls, ...posts].map((distance) => distance - hub));
}

function wallDistances(given: Parameters, { axis, axisB, besides }: Foot, [c, s]: Vec2): number[] {
  const normals: readonly (readonly [number, Vec2])[] = [
    [axis, [0, -1]],
    ...(given.mount === "in-corner" ? [[axisB, [-sinDeg(given.cornerAngle), cosDeg(given.cornerAngle)]] as const] : []),
  ];
  return normals.flatMap(([offset, [nx, ny]]) => {
    const towards = c * nx + s * ny;
    if (towards <= 1e-6) return [];
    const distance = offset / towards;
    const aside = Math.abs(c * distance * ny - s * distance * nx);
    return aside <= besides + KEY_PATH ? [distance] : [];
  });
}
