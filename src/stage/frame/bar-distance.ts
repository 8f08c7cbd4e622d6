import type { Vec3 } from "../../geometry/mesh.ts";
import { cornersOf, type PlacedBar } from "./placed-bar.ts";
import { dot, minus, stepped } from "./vector.ts";

/** Where two bars are nearest to each other, a place on each, and how far apart those are. mm */
export interface Nearest {
  readonly gap: number;
  readonly here: Vec3;
  readonly there: Vec3;
}

/** Rounds of the search, and how much longer than the shortest way what it finds may be, mm. */
const ROUNDS = 5000;
const SETTLED = 1e-6;

/**
 * Returns where two bars are nearest; 0 apart where they touch or share space. mm. The nearest place of the one box to
 * a place of the other is found in turns, which ends at the shortest way since both are convex; each turn goes on a
 * little in the direction of the last one, without which long bars that are almost parallel take for ever. It ends when
 * a slab between the boxes shows that no way is shorter. Source: Nesterov's acceleration (1983), from memory.
 */
export function nearestOf(one: PlacedBar, other: PlacedBar): Nearest {
  const corners = [cornersOf(one), cornersOf(other)] as const;
  let there = nearestIn(other, nearestIn(one, stepped(other.from, other.along, other.length / 2)));
  let here = nearestIn(one, there);
  let gap = distance(here, there);
  let before = there;
  let pace = 1;
  for (let round = 0; round < ROUNDS && gap - widthBetween(corners, here, there) > SETTLED; round++) {
    const faster = (1 + Math.sqrt(1 + 4 * pace * pace)) / 2;
    const ahead = stepped(there, minus(there, before), (pace - 1) / faster);
    const next = nearestIn(other, nearestIn(one, ahead));
    const across = nearestIn(one, next);
    const longer = distance(across, next) > gap;
    // It went on too far: once more from where it was, without.
    before = there;
    pace = longer ? 1 : faster;
    there = longer ? nearestIn(other, here) : next;
    here = longer ? nearestIn(one, there) : across;
    gap = distance(here, there);
  }
  return { gap, here, there };
}

/** The width of the slab across the way from here to there that has one box on each side; 0 where there is none. mm */
function widthBetween([mine, its]: readonly [readonly Vec3[], readonly Vec3[]], here: Vec3, there: Vec3): number {
  const way = minus(there, here);
  const length = Math.hypot(...way);
  if (length === 0) return 0;
  const along = (corner: Vec3) => dot(corner, way) / length;
  return Math.max(0, Math.min(...its.map(along)) - Math.max(...mine.map(along)));
}

/** Returns a length that the gap between two bars is never shorter than, found at once. mm */
export function gapAtLeast(one: PlacedBar, other: PlacedBar): number {
  const [a, b] = [cornersOf(one), cornersOf(other)];
  const apart = ([0, 1, 2] as const).map((axis) => {
    const [mine, its] = [a.map((corner) => corner[axis]), b.map((corner) => corner[axis])];
    return Math.max(0, Math.min(...its) - Math.max(...mine), Math.min(...mine) - Math.max(...its));
  });
  return Math.hypot(...apart);
}

const distance = (a: Vec3, b: Vec3) => Math.hypot(...minus(a, b));

function nearestIn({ from, along, across, up, length, wide, high }: PlacedBar, place: Vec3): Vec3 {
  const way = minus(place, from);
  const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
  const run = stepped(from, along, within(dot(way, along), 0, length));
  const beside = stepped(run, across, within(dot(way, across), -wide / 2, wide / 2));
  return stepped(beside, up, within(dot(way, up), -high / 2, high / 2));
}
