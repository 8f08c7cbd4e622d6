import type { Derived } from "../../parts/wheel-plate/derive.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { sectionOf } from "./bar-frame.ts";
import type { CarriagePlace } from "./carriage-place.ts";

type Span = [number, number];

/** A box of the frame in the frame of a carriage's plate, as its family takes it. mm. */
interface Obstacle {
  readonly name: string;
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
}

/** Nothing of a carriage reaches further from its post, along or across the axles, mm. */
const REACH = 200;

/** Returns the bars of the frame near the post, as boxes in the frame of the carriage's plate at the bottom. */
export function obstaclesOf(plan: Plan, postName: string, place: CarriagePlace, derived: Derived): Obstacle[] {
  return Object.entries(plan.bars).flatMap(([name, bar]) => {
    if (bar.moves || name === postName) return [];
    const box = boxIn(bar, place, derived.wheelPlane);
    const near = [box.x, box.z].every(([from, to]) => from < REACH && to > -REACH);
    return near && [...box.x, ...box.z].every((each) => Math.abs(each) <= 1e4)
      ? [{ name: `bar ${name}`, ...clipped(box) }]
      : [];
  });
}

/** Plate frame: x across the post, y up from the plate's middle, z from the plate's wheel side towards the post. */
function boxIn(bar: PlanBar, { post, away, height }: CarriagePlace, wheelPlane: number) {
  const corners = cornersOf(bar).map(([x, y, z]) => {
    const [dx, dy] = [x - post.x, y - post.y];
    const out = dx * away.x + dy * away.y;
    return [dx * away.y - dy * away.x, z - height, wheelPlane - out] as const;
  });
  const span = (axis: 0 | 1 | 2): Span => {
    const all = corners.map((corner) => corner[axis]);
    return [Math.min(...all), Math.max(...all)];
  };
  return { x: span(0), y: span(1), z: span(2) };
}

/** The corners of a bar's outline; of an upright one with its width along x. */
function cornersOf(bar: PlanBar): [number, number, number][] {
  const { from, to } = bar;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const { wide, high } = sectionOf(bar);
  const [nx, ny] = length > 1e-6 ? [-(to[1] - from[1]) / length, (to[0] - from[0]) / length] : [1, 0];
  const upright = length <= 1e-6;
  return [from, to].flatMap(([x, y, z]) =>
    [-1, 1].flatMap((side) =>
      [-1, 1].map((other): [number, number, number] => {
        const [a, b] = [(side * wide) / 2, (other * high) / 2];
        return upright ? [x + a, y + b, z] : [x + a * nx, y + a * ny, z + b];
      }),
    ),
  );
}

/** Within what the family takes. */
function clipped({ x, y, z }: { readonly x: Span; readonly y: Span; readonly z: Span }) {
  const within = ([from, to]: Span, most: number): Span => [
    Math.round(Math.max(-most, Math.min(most, from)) * 1000) / 1000 + 0,
    Math.round(Math.max(-most, Math.min(most, to)) * 1000) / 1000 + 0,
  ];
  return { x: within(x, 500), y: within(y, 3000), z: within(z, 500) };
}
