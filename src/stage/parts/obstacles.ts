import type { Derived } from "../../parts/wheel-plate/derive.ts";
import { cornersOf, type PlacedBar, placedBars } from "../frame/placed-bar.ts";
import type { Plan } from "../schema/index.ts";
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
  return placedBars(plan).flatMap((bar) => {
    const { name } = bar;
    if (bar.moves || name === postName) return [];
    const box = boxIn(bar, place, derived.wheelPlane);
    const near = [box.x, box.z].every(([from, to]) => from < REACH && to > -REACH);
    return near && [...box.x, ...box.z].every((each) => Math.abs(each) <= 1e4)
      ? [{ name: `bar ${name}`, ...clipped(box) }]
      : [];
  });
}

/** Plate frame: x across the post, y up from the plate's middle, z from the plate's wheel side towards the post. */
function boxIn(bar: PlacedBar, { post, away, height }: CarriagePlace, wheelPlane: number) {
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

/** Within what the family takes. */
function clipped({ x, y, z }: { readonly x: Span; readonly y: Span; readonly z: Span }) {
  const within = ([from, to]: Span, most: number): Span => [
    Math.round(Math.max(-most, Math.min(most, from)) * 1000) / 1000 + 0,
    Math.round(Math.max(-most, Math.min(most, to)) * 1000) / 1000 + 0,
  ];
  return { x: within(x, 500), y: within(y, 3000), z: within(z, 500) };
}
