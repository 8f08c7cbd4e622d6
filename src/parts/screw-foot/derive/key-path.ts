import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { stretchToOutline } from "../plan.ts";
import { alongSecondBar, barBoxes, box, plateBoxes, type Tower, wallHalf } from "../surroundings.ts";
import type { Posts } from "./bridge.ts";
import type { Corner } from "./corner.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";
import type { Stack } from "./stack.ts";

export interface KeyPath {
  readonly keyLength: number;
  /** What stands in the key's way; undefined when it is free. */
  readonly keyMeets: string | undefined;
}

/** The longest reach of a key, and the diameter of its straight path to the set screw, mm. */
export const LONGEST_KEY = 80;
export const KEY_PATH = 5;
/** Plastic that must stay on either side of the path where it goes through a wall or a post, mm. */
const LEFT_OVER = 2.5;

type Foot = Posts & Housing & Fixing & Stack & Corner;

/** Returns the way of the key to the set screw: how far it runs through the foot's own parts, and what it meets. */
export function keyPathOf(given: Parameters, bought: Bought, foot: Foot, walled: boolean): KeyPath {
  const hub = bought.pulley.hubDiameter / 2;
  const met = ({ outline }: { readonly outline: readonly Vec2[] }) => {
    const { ahead, touches } = crossing(outline, given.keyAzimuth);
    return touches && ahead > hub;
  };
  const pierced = walled ? walls(given, bought, foot).filter(met) : [];
  const grazed = pierced.find(({ outline }) => !crossing(outline, given.keyAzimuth).whole);
  // A post is full of bolts and nuts: no key goes through it.
  const post = foot.posts.find(({ section }) => met({ outline: section }));
  const own = post === undefined ? grazed && `end of the ${grazed.name}` : `bridge's post at ${post.azimuth} deg`;
  return {
    keyLength: Math.max(0, ...pierced.map(({ outline }) => crossing(outline, given.keyAzimuth).ahead - hub)),
    keyMeets: obstacle(given, bought, foot, hub) ?? own,
  };
}

/** Bars, the plates bolted to them and posts of the frame: no key goes through them. */
function obstacle(given: Parameters, bought: Bought, foot: Foot, from: number): string | undefined {
  const { keyAzimuth, framePosts } = given;
  const [c, s] = [cosDeg(keyAzimuth), sinDeg(keyAzimuth)];
  const to = from + LONGEST_KEY;
  const below = foot.setScrewHeight - KEY_PATH / 2;
  const uprights = framePosts.map(({ x, y, width }): Tower => {
    const half = width / 2;
    return { name: "post of the frame", outline: box(x - half, y - half, x + half, y + half), top: 1e4 };
  });
  const standing = [...barBoxes(given, bought, foot), ...plateBoxes(given, bought, foot), ...uprights];
  const met = standing.find(({ outline, top }) => {
    const gap = stretchToOutline([from * c, from * s], [to * c, to * s], outline);
    return gap < KEY_PATH / 2 - 1e-9 && below < top - 1e-9;
  });
  return met?.name;
}

interface Crossing {
  /** How far along the path the outline reaches. */
  readonly ahead: number;
  readonly touches: boolean;
  /** Whether enough of the outline stays on both sides of the path. */
  readonly whole: boolean;
}

function crossing(outline: readonly Vec2[], azimuth: number): Crossing {
  const [c, s] = [cosDeg(azimuth), sinDeg(azimuth)];
  const asides = outline.map(([x, y]) => y * c - x * s);
  const [low, high] = [Math.min(...asides), Math.max(...asides)];
  const half = KEY_PATH / 2 + 0.5;
  return {
    ahead: Math.max(...outline.map(([x, y]) => x * c + y * s)),
    touches: low < half && high > -half,
    whole: low <= -half - LEFT_OVER && high >= half + LEFT_OVER,
  };
}

function walls(given: Parameters, bought: Bought, foot: Foot) {
  const { axis, axisB, plate, besides, cornerToAxis, cornerToAxisB } = foot;
  const [name, half] = ["wall", wallHalf(given, bought, foot)];
  if (given.mount !== "in-corner") return [{ name, outline: box(-half, -axis, half, -axis + plate) }];
  const second = box(-cornerToAxisB, -axisB, besides, -axisB + plate).map(alongSecondBar(given.cornerAngle));
  return [
    { name, outline: box(-cornerToAxis, -axis, besides, -axis + plate) },
    { name: "second wall", outline: second },
  ];
}
