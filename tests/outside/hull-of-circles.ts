import type { LoopNode } from "../../src/mechanics/index.ts";

/** Directions in which the hull is looked at. */
const DIRECTIONS = 4096;
const CELL = (2 * Math.PI) / DIRECTIONS;
/** A cell in which two circles change places is halved down to this width, rad. */
const FINEST = 1e-13;

const COSINES = Float64Array.from({ length: 2 * DIRECTIONS + 1 }, (_, index) => Math.cos((index * CELL) / 2));
const SINES = Float64Array.from({ length: 2 * DIRECTIONS + 1 }, (_, index) => Math.sin((index * CELL) / 2));

export interface CircleHull {
  /** Length of the taut band round all circles, mm. */
  readonly perimeter: number;
  /** Circles in the order in which the band meets them, counter-clockwise; twice when it comes back to one. */
  readonly met: readonly number[];
  /** The least that a circle stands out of the others' hull, or is hidden in it, mm: how clear the verdict is. */
  readonly margin: number;
}

/**
 * Measures the convex hull of circles without a single tangent: its perimeter is the integral of its support function
 * over all directions, and the support function of circles is max(x cos + y sin + r).
 *
 * Source: Cauchy's formula for the perimeter of a plane convex body (integral geometry), integrated by Simpson's rule
 * between the directions in which another circle comes to the front.
 */
export function hullOfCircles(circles: readonly LoopNode[]): CircleHull {
  const reach = new Float64Array(circles.length).fill(Number.NEGATIVE_INFINITY);
  const best = new Int32Array(COSINES.length);
  const height = new Float64Array(COSINES.length);
  const own = new Float64Array(circles.length);
  for (let at = 0; at < COSINES.length; at++) {
    const [cos, sin] = [COSINES[at] as number, SINES[at] as number];
    let front = 0;
    let first = Number.NEGATIVE_INFINITY;
    let second = Number.NEGATIVE_INFINITY;
    for (let index = 0; index < circles.length; index++) {
      const circle = circles[index] as LoopNode;
      const value = circle.x * cos + circle.y * sin + circle.radius;
      own[index] = value;
      if (value > first) {
        second = first;
        first = value;
        front = index;
      } else if (value > second) second = value;
    }
    for (let index = 0; index < circles.length; index++) {
      const over = (own[index] as number) - (index === front ? second : first);
      if (over > (reach[index] as number)) reach[index] = over;
    }
    best[at] = front;
    height[at] = first;
  }
  let perimeter = 0;
  for (let low = 0; low + 2 < COSINES.length; low += 2) {
    const one = best[low] === best[low + 1] && best[low + 1] === best[low + 2];
    const simpson = (height[low] as number) + 4 * (height[low + 1] as number) + (height[low + 2] as number);
    perimeter += one ? (CELL / 6) * simpson : integral(circles, (low * CELL) / 2, (low / 2 + 1) * CELL);
  }
  const runs = [...best].filter((circle, index) => index === 0 || circle !== best[index - 1]);
  const met = runs.length > 1 && runs[0] === runs.at(-1) ? runs.slice(0, -1) : runs;
  return { perimeter, met, margin: Math.min(...reach.map(Math.abs)) };
}

function support(circles: readonly LoopNode[], angle: number): { best: number; height: number } {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  let [best, height] = [0, Number.NEGATIVE_INFINITY];
  for (const [index, { x, y, radius }] of circles.entries()) {
    const own = x * cos + y * sin + radius;
    if (own > height) [best, height] = [index, own];
  }
  return { best, height };
}

function integral(circles: readonly LoopNode[], from: number, to: number): number {
  const middle = (from + to) / 2;
  const [low, half, high] = [support(circles, from), support(circles, middle), support(circles, to)];
  const one = low.best === half.best && half.best === high.best;
  if (one || to - from < FINEST) return ((to - from) / 6) * (low.height + 4 * half.height + high.height);
  return integral(circles, from, middle) + integral(circles, middle, to);
}

/**
 * Returns two perimeters between which that of the hull lies: the hulls of polygons inside and outside the circles.
 * Source: a convex body inside another has the shorter outline.
 */
export function sampledHull(circles: readonly LoopNode[], corners: number): { least: number; most: number } {
  const outline = (stretch: number) =>
    perimeterOf(
      hullOf(
        circles.flatMap(({ x, y, radius }) =>
          Array.from({ length: corners }, (_, corner): [number, number] => {
            const angle = (2 * Math.PI * corner) / corners;
            return [x + stretch * radius * Math.cos(angle), y + stretch * radius * Math.sin(angle)];
          }),
        ),
      ),
    );
  return { least: outline(1), most: outline(1 / Math.cos(Math.PI / corners)) };
}

/** The convex hull of points, counter-clockwise, by the lower and the upper chain of the sorted points. */
function hullOf(points: readonly [number, number][]): [number, number][] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...chain(sorted), ...chain(sorted.reverse())];
}

function chain(points: readonly [number, number][]): [number, number][] {
  const kept: [number, number][] = [];
  for (const [x, y] of points) {
    for (;;) {
      const [a, b] = [kept.at(-2), kept.at(-1)];
      if (a === undefined || b === undefined) break;
      if ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) > 0) break;
      kept.pop();
    }
    kept.push([x, y]);
  }
  return kept.slice(0, -1);
}

function perimeterOf(corners: readonly [number, number][]): number {
  return corners.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] as [number, number];
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
}
