import type { Point } from "../../mechanics/point.ts";
import { placedBar } from "../frame/placed-bar.ts";
import type { Plan, PlanBar } from "../schema/index.ts";

/** Whether a bar lies level, and whether it stands upright, as the frame takes it. */
export const isLevel = (bar: PlanBar) => placedBar("", bar).kind === "level";
export const isUpright = (bar: PlanBar) => placedBar("", bar).kind === "upright";

/** Width of a level bar as seen from above, and its height, mm. */
export function sectionOf({ bar, turned }: PlanBar): { readonly wide: number; readonly high: number } {
  const { width, height } = bar.values;
  return turned ? { wide: height, high: width } : { wide: width, high: height };
}

/** A place beside a level bar in plan. mm; vectors of length 1. */
export interface Beside {
  /** Along the bar, from its `from` end. */
  readonly along: number;
  readonly direction: Point;
  /** From the bar's middle line to the place, and how far that is. */
  readonly away: Point;
  readonly distance: number;
  readonly length: number;
}

/** Returns where a place stands beside a level bar. A place on the middle line counts as to the left. */
export function beside({ from, to }: PlanBar, place: Point): Beside {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const direction = { x: (to[0] - from[0]) / length, y: (to[1] - from[1]) / length };
  const [dx, dy] = [place.x - from[0], place.y - from[1]];
  const across = direction.x * dy - direction.y * dx;
  const sign = across < 0 ? -1 : 1;
  return {
    along: dx * direction.x + dy * direction.y,
    direction,
    away: { x: -sign * direction.y, y: sign * direction.x },
    distance: Math.abs(across),
    length,
  };
}

/** Returns the level moving bar that is nearest to a place; undefined where there is none. */
export function nearestMovingBar({ bars }: Plan, place: Point): string | undefined {
  const near = Object.entries(bars).filter(([, bar]) => bar.moves && isLevel(bar));
  const far = ([, bar]: [string, PlanBar]) => {
    const { along, distance, length } = beside(bar, place);
    return Math.hypot(distance, Math.max(0, -along, along - length));
  };
  const [first] = near.sort((one, other) => far(one) - far(other));
  return first?.[0];
}

/** Returns the direction of a vector, deg, counter-clockwise from +x. */
export const angleOf = ({ x, y }: Point) => (Math.atan2(y, x) * 180) / Math.PI;

/** Returns an angle within -180 to 180 deg, without noise. */
export function wrapped(angle: number): number {
  const turned = ((((angle + 180) % 360) + 360) % 360) - 180;
  const rounded = Math.round(turned * 100) / 100;
  return rounded === -180 ? 180 : rounded === 0 ? 0 : rounded;
}

/** Returns a number without noise: equal parts must come out equal. */
export const rounded = (value: number, digits: number) => {
  const result = Number(value.toFixed(digits));
  return result === 0 ? 0 : result;
};
