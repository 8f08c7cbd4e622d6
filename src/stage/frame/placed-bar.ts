import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2, Vec3 } from "../../geometry/mesh.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { cross, dot, minus, stepped, unit } from "./vector.ts";

/** A bar as it stands in the machine: its middle line and the two directions of its section. mm. */
export interface PlacedBar {
  readonly name: string;
  readonly bar: PlanBar["bar"];
  readonly moves: boolean;
  readonly kind: "level" | "upright" | "slanted";
  readonly from: Vec3;
  readonly length: number;
  readonly along: Vec3;
  /** Level for a level bar; the direction of its width for an upright one. */
  readonly across: Vec3;
  /** Up for a level bar. */
  readonly up: Vec3;
  /** Size of the section along `across`. */
  readonly wide: number;
  /** Size of the section along `up`. */
  readonly high: number;
}

/** A bar leans by no more than this over its length and is still level, or upright. */
const LEAN = 1 / 200;

/** Returns every bar of the plan as it stands. */
export function placedBars({ bars }: Plan): PlacedBar[] {
  return Object.entries(bars).map(([name, bar]) => placedBar(name, bar));
}

/** Returns a bar of the plan as it stands. */
export function placedBar(name: string, { bar, from, to, turned, moves, facing }: PlanBar): PlacedBar {
  const way = minus(to, from);
  const length = Math.hypot(...way);
  const along = unit(way);
  const kind = kindOf(along);
  const [across, up] = kind === "upright" ? standing(along, facing) : lying(along);
  const { width, height } = bar.values;
  const [wide, high] = turned ? [height, width] : [width, height];
  return { name, bar, moves, kind, from, length, along, across, up, wide, high };
}

function kindOf([x, y, z]: Vec3): PlacedBar["kind"] {
  if (Math.abs(z) <= LEAN) return "level";
  return Math.hypot(x, y) <= LEAN ? "upright" : "slanted";
}

function lying(along: Vec3): [Vec3, Vec3] {
  const across = unit([-along[1], along[0], 0]);
  return [across, cross(along, across)];
}

function standing(along: Vec3, facing: number): [Vec3, Vec3] {
  const asked: Vec3 = [cosDeg(facing), sinDeg(facing), 0];
  const across = unit(stepped(asked, along, -dot(asked, along)));
  return [across, cross(along, across)];
}

/** Returns where a place in plan lies beside a bar: how far along it, and how far off its middle line. mm */
export function besideBar({ from, along, across }: PlacedBar, [x, y]: Vec2): { along: number; off: number } {
  const way: Vec3 = [x - from[0], y - from[1], 0];
  const flat = unit([along[0], along[1], 0]);
  return { along: dot(way, flat), off: dot(way, across) };
}

/** Returns the height of a level bar's top beside a place that lies `along` from its beginning. mm */
export function topOf({ from, along, up, high }: PlacedBar, distance: number): number {
  const flat = Math.hypot(along[0], along[1]);
  const rise = flat > 0 ? along[2] / flat : 0;
  return from[2] + distance * rise + (high / 2) * up[2];
}

/** Returns the eight corners of a bar. */
export function cornersOf({ from, length, along, across, up, wide, high }: PlacedBar): Vec3[] {
  return [0, length].flatMap((end) =>
    [-1, 1].flatMap((side) =>
      [-1, 1].map((level) => {
        const middle = stepped(from, along, end);
        return stepped(stepped(middle, across, (side * wide) / 2), up, (level * high) / 2);
      }),
    ),
  );
}

/** Returns whether a vertical line at a place in plan meets a bar between two heights. mm */
export function meetsLine(bar: PlacedBar, [x, y]: Vec2, low: number, high: number): boolean {
  // The part of the line that lies inside the three slabs of the box.
  const slabs: [Vec3, number, number][] = [
    [bar.along, 0, bar.length],
    [bar.across, -bar.wide / 2, bar.wide / 2],
    [bar.up, -bar.high / 2, bar.high / 2],
  ];
  let [from, to] = [low, high];
  for (const [axis, least, most] of slabs) {
    const start = dot([x - bar.from[0], y - bar.from[1], -bar.from[2]], axis);
    const rise = axis[2];
    if (Math.abs(rise) < 1e-9) {
      if (start <= least + 1e-6 || start >= most - 1e-6) return false;
      continue;
    }
    const ends = [(least - start) / rise, (most - start) / rise];
    from = Math.max(from, Math.min(...ends));
    to = Math.min(to, Math.max(...ends));
  }
  return to - from > 1e-6;
}
