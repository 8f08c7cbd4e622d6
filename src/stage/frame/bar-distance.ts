import type { Vec3 } from "../../geometry/mesh.ts";
import { cornersOf, type PlacedBar } from "./placed-bar.ts";
import { dot, minus, stepped } from "./vector.ts";

/** Where two bars are nearest to each other, a place on each, and how far apart those are. mm */
export interface Nearest {
  readonly gap: number;
  readonly here: Vec3;
  readonly there: Vec3;
}

/** Rounds of the search, and what a round must still bring, mm. */
const ROUNDS = 5000;
const SETTLED = 1e-9;

/**
 * Returns where two bars are nearest; 0 apart where they touch or share space. mm. The nearest place of the one box to
 * a place of the other is found in turns, which ends at the shortest way since both are convex.
 */
export function nearestOf(one: PlacedBar, other: PlacedBar): Nearest {
  let here = nearestIn(one, stepped(other.from, other.along, other.length / 2));
  let there = nearestIn(other, here);
  let gap = distance(here, there);
  for (let round = 0; round < ROUNDS && gap > 0; round++) {
    here = nearestIn(one, there);
    there = nearestIn(other, here);
    const now = distance(here, there);
    if (gap - now < SETTLED) break;
    gap = now;
  }
  return { gap: distance(here, there), here, there };
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
