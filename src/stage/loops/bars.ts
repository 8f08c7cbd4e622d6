import { distance, distanceToSegment, type Point, type Segment, segmentDistance } from "../../mechanics/index.ts";
import type { Plan, PlanBar } from "../schema/index.ts";

/** A difference of places below which a bar counts as level or upright, mm. */
const STRAIGHT = 1e-6;

/** Returns the outline in plan of what a bar has between two heights; undefined when that is nothing. */
export function outlineBetween(bar: PlanBar, low: number, high: number): readonly Point[] | undefined {
  const { width, height } = bar.bar.values;
  const [across, upright] = bar.turned ? [height, width] : [width, height];
  const [from, to] = [bar.from, bar.to];
  const rise = to[2] - from[2];
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (run <= STRAIGHT) {
    const [bottom, top] = [Math.min(from[2], to[2]), Math.max(from[2], to[2])];
    if (top <= low || bottom >= high) return undefined;
    return box({ x: from[0] - across / 2, y: from[1] }, { x: from[0] + across / 2, y: from[1] }, upright / 2);
  }
  if (Math.abs(rise) <= STRAIGHT) {
    if (from[2] + upright / 2 <= low || from[2] - upright / 2 >= high) return undefined;
    return box(spotOf(from), spotOf(to), across / 2);
  }
  return leaning(bar, [low, high], Math.hypot(width, height) / 2);
}

const spotOf = ([x, y]: readonly [number, number, number]): Point => ({ x, y });

/** A leaning bar is taken as round, with the circle about its section. */
function leaning({ from, to }: PlanBar, [low, high]: [number, number], radius: number): readonly Point[] | undefined {
  const at = (z: number) => (z - from[2]) / (to[2] - from[2]);
  const [one, other] = [at(low - radius), at(high + radius)];
  const [start, end] = [Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other))];
  if (start >= end) return undefined;
  const along = (share: number): Point => ({
    x: from[0] + share * (to[0] - from[0]),
    y: from[1] + share * (to[1] - from[1]),
  });
  return box(along(start), along(end), radius);
}

function box(from: Point, to: Point, half: number): readonly Point[] {
  const length = distance(from, to);
  const [nx, ny] = [(-(to.y - from.y) / length) * half, ((to.x - from.x) / length) * half];
  return [
    { x: from.x - nx, y: from.y - ny },
    { x: to.x - nx, y: to.y - ny },
    { x: to.x + nx, y: to.y + ny },
    { x: from.x + nx, y: from.y + ny },
  ];
}

/** Returns the distance in plan of a span and an outline, mm; 0 where they meet. */
export function outlineDistance(outline: readonly Point[], span: Segment): number {
  if (covers(outline, span.from)) return 0;
  return Math.min(...edgesOf(outline).map((edge) => segmentDistance(edge, span)));
}

/** Returns the distance in plan of a place and an outline, mm; 0 within it. */
export function outlineDistanceFrom(outline: readonly Point[], point: Point): number {
  if (covers(outline, point)) return 0;
  return Math.min(...edgesOf(outline).map((edge) => distanceToSegment(point, edge)));
}

function edgesOf(outline: readonly Point[]): Segment[] {
  return outline.map((from, index) => ({ from, to: outline[(index + 1) % outline.length] as Point }));
}

/** Whether a convex outline covers a place. */
function covers(outline: readonly Point[], { x, y }: Point): boolean {
  return edgesOf(outline).every(({ from, to }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) >= 0);
}

/** Returns the level bar of the frame that carries a screw's foot: the one named, else the nearest; by its name. */
export function barOfScrew(plan: Plan, screw: string): { name: string; bar: PlanBar } | undefined {
  const { at, bar: named } = plan.screws[screw] as Plan["screws"][string];
  const from = { x: at[0], y: at[1] };
  const level = Object.entries(plan.bars).filter(
    ([name, bar]) => !bar.moves && isLevel(bar) && (named ?? name) === name,
  );
  const away = ([, bar]: [string, PlanBar]) => distanceToSegment(from, { from: spotOf(bar.from), to: spotOf(bar.to) });
  const [nearest] = level.sort((a, b) => away(a) - away(b));
  return nearest === undefined ? undefined : { name: nearest[0], bar: nearest[1] };
}

function isLevel({ from, to }: PlanBar): boolean {
  return Math.abs(to[2] - from[2]) <= STRAIGHT && Math.hypot(to[0] - from[0], to[1] - from[1]) > STRAIGHT;
}

/** Returns the direction of a level bar in plan, from +x, deg. */
export function directionOf({ from, to }: PlanBar): number {
  return (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
}
