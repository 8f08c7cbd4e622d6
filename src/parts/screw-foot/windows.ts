import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import type { Solid } from "../../geometry/solid.ts";
import { beltWindow } from "../features/belt-window.ts";
import { hasWall, type Span, spansOf } from "./derive/clearances.ts";
import type { Foot } from "./modes/mounting.ts";
import { wallHalf } from "./surroundings.ts";

/** Play round a belt in a window, mm. */
const PLAY = 3;
/** A strip of wall narrower than this beside or between windows is left out, mm. */
const NARROWEST = 6;
const OVERRUN = 1;

/** One wall in the frame of its own bar: x along it from the axis' foot, y away from it. */
interface Wall {
  readonly front: number;
  readonly back: number;
  readonly ends: readonly [number, number];
  /** How wide a strip must stay at the end at -x: more in a corner, where the groove for the bars' edge is. */
  readonly startStrip: number;
  /** From the foot's frame to the wall's, and the way back for bodies. */
  readonly point: (point: Vec2) => Vec2;
  readonly place: (solid: Solid) => Solid;
}

type Stretch = readonly [number, number];

/** Returns the openings for the belt spans that run through the foot's walls. */
export function windows(foot: Foot): Solid[] {
  const { given, derived } = foot;
  if (!hasWall(given)) return [];
  const spans = spansOf(given, derived.bought, derived.beltRadius);
  return wallsOf(foot).flatMap((wall) => {
    const stretches = spans.flatMap((span) => stretchOf(span, wall, foot));
    return merged(stretches, wall).map((stretch) => opened(stretch, wall, foot));
  });
}

function wallsOf({ given, derived }: Foot): Wall[] {
  const { axis, axisB, plate, besides, plateHalf, cornerToAxis, cornerToAxisB } = derived;
  const same = <T>(thing: T) => thing;
  const straight = { front: -axis + plate, back: -axis, startStrip: NARROWEST, point: same, place: same };
  const half = wallHalf(given, derived.bought, derived);
  if (given.mount === "on-side") return [{ ...straight, ends: [-plateHalf, plateHalf] }];
  if (given.mount !== "in-corner") return [{ ...straight, ends: [-half, half] }];
  const [c, s] = [cosDeg(given.cornerAngle), sinDeg(given.cornerAngle)];
  // A mirror image: the same map leads there and back.
  const second: Wall = {
    front: -axisB + plate,
    back: -axisB,
    startStrip: plate + NARROWEST,
    ends: [-cornerToAxisB, besides],
    point: ([x, y]) => [x * c + y * s, x * s - y * c],
    place: (of) => ({ kind: "placed", of, placement: [c, s, 0, 0, s, -c, 0, 0, 0, 0, 1, 0] }),
  };
  return [{ ...straight, startStrip: plate + NARROWEST, ends: [-cornerToAxis, besides] }, second];
}

/** Returns where the belt, with play on both sides, passes through a wall's thickness. */
function stretchOf({ from, to }: Span, { point, front, back, ends }: Wall, { derived }: Foot): Stretch[] {
  const half = derived.bought.belt.thickness / 2 + PLAY;
  const [a, b] = [point(from), point(to)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [(-(b[1] - a[1]) / length) * half, ((b[0] - a[0]) / length) * half];
  const strip: Vec2[] = [
    [a[0] + nx, a[1] + ny],
    [a[0] - nx, a[1] - ny],
    [b[0] - nx, b[1] - ny],
    [b[0] + nx, b[1] + ny],
  ];
  const xs = strip.flatMap((corner, index) => edgeInSlab(corner, strip[(index + 1) % 4] ?? corner, back, front));
  if (xs.length === 0) return [];
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  return high <= ends[0] || low >= ends[1] ? [] : [[low, high]];
}

/** Returns the ends in x of the part of an edge that lies between two heights; nothing when none does. */
function edgeInSlab(a: Vec2, b: Vec2, low: number, high: number): number[] {
  const rise = b[1] - a[1];
  if (Math.abs(rise) < 1e-9) return a[1] > low && a[1] < high ? [a[0], b[0]] : [];
  const [one, other] = [(low - a[1]) / rise, (high - a[1]) / rise];
  const [start, end] = [Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other))];
  return end > start ? [a[0] + start * (b[0] - a[0]), a[0] + end * (b[0] - a[0])] : [];
}

/** Returns the stretches with those joined that lie close, and run out over an end that lies close. */
function merged(stretches: readonly Stretch[], { ends, startStrip }: Wall): Stretch[] {
  const joined: [number, number][] = [];
  for (const [low, high] of [...stretches].sort((p, q) => p[0] - q[0])) {
    const last = joined.at(-1);
    if (last !== undefined && low - last[1] < NARROWEST) last[1] = Math.max(last[1], high);
    else joined.push([low, high]);
  }
  return joined.map(([low, high]): Stretch => {
    const start = low - ends[0] < startStrip ? ends[0] - OVERRUN : low;
    return [start, ends[1] - high < NARROWEST ? ends[1] + OVERRUN : high];
  });
}

function opened(x: Stretch, { front, back, ends, place }: Wall, { given, derived, printer }: Foot): Solid {
  const { plane, residual, postTop } = derived;
  const half = given.beltWidth / 2 + PLAY + Math.abs(residual);
  const width = x[1] - x[0];
  const gable = width > printer.bridgeComfort ? width / 2 : 0;
  const open = x[0] < ends[0] || x[1] > ends[1];
  const z = [plane - half, plane + half] as const;
  return place(beltWindow({ x, y: [back, front], z, gable, wallTop: postTop, open }));
}
