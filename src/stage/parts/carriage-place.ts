import type { Point } from "../../mechanics/point.ts";
import { placedBar } from "../frame/placed-bar.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { beside, isLevel, sectionOf } from "./bar-frame.ts";

interface Arm {
  readonly name: string;
  /** Width as seen from above, and distance of its middle line from the post's, mm. */
  readonly wide: number;
  readonly distance: number;
  /** It is not level, or does not run as the first arm does. */
  readonly skew: boolean;
}

/** Where a carriage stands on its post, at the bottom of the travel. mm. */
export interface CarriagePlace {
  readonly post: Point;
  /** From the post towards the plate, along the axles, of length 1. */
  readonly away: Point;
  /** Middle of the plate. */
  readonly height: number;
  readonly bottom: number;
  readonly top: number;
  /** Section of the post: across the wheels, along the axles, from groove to groove. */
  readonly width: number;
  readonly depth: number;
  readonly module: number;
  readonly arms: readonly Arm[];
  readonly armsAt: readonly number[];
}

/** An arm may be turned against the first by this, deg of its sine. */
const SKEW = 0.01;

/** Returns how a carriage stands on its post: its plate faces its arms, or the middle of the plate without arms. */
export function carriagePlace(plan: Plan, name: string, post: PlanBar): CarriagePlace {
  const at = { x: post.from[0], y: post.from[1] };
  const bars = (plan.carriages[name]?.arms ?? []).flatMap((arm): [string, PlanBar][] => {
    const bar = plan.bars[arm];
    return bar === undefined ? [] : [[arm, bar]];
  });
  const first = bars.find(([, bar]) => isLevel(bar))?.[1];
  const away = first === undefined ? towardsPlate(plan, at, post) : towardsArm(first, at);
  const heights = bars.map(([, bar]) => bar.from[2]);
  const mean = heights.reduce((sum, each) => sum + each, 0) / Math.max(1, heights.length);
  const height = heights.length === 0 ? plan.travel.nut : mean;
  const { across, wide, high } = placedBar("", post);
  const along = Math.abs(across[0] * away.x + across[1] * away.y);
  const wideAway = along > Math.SQRT1_2;
  return {
    post: at,
    away,
    height,
    bottom: Math.min(post.from[2], post.to[2]),
    top: Math.max(post.from[2], post.to[2]),
    width: wideAway ? high : wide,
    depth: wideAway ? wide : high,
    module: post.bar.values.module,
    arms: bars.map(([arm, bar]) => armOf(arm, bar, at, away)),
    armsAt: heights.map((each) => Math.round((each - height) * 1000) / 1000 + 0),
  };
}

function towardsArm(arm: PlanBar, at: Point): Point {
  const { away } = beside(arm, at);
  return { x: 0 - away.x, y: 0 - away.y };
}

/** Square to the face of the post that looks most towards the middle of the plate. */
function towardsPlate({ plate }: Plan, at: Point, post: PlanBar): Point {
  const { across } = placedBar("", post);
  const [dx, dy] = [plate.at[0] - at.x, plate.at[1] - at.y];
  const faces = [
    { x: across[0], y: across[1] },
    { x: 0 - across[1], y: across[0] },
    { x: 0 - across[0], y: 0 - across[1] },
    { x: across[1], y: 0 - across[0] },
  ];
  const looks = ({ x, y }: Point) => x * dx + y * dy;
  return faces.reduce((best, face) => (looks(face) > looks(best) + 1e-9 ? face : best));
}

function armOf(name: string, bar: PlanBar, at: Point, away: Point): Arm {
  const { wide } = sectionOf(bar);
  if (!isLevel(bar)) return { name, wide, distance: 0, skew: true };
  const { direction, distance } = beside(bar, at);
  const skew = Math.abs(direction.x * away.x + direction.y * away.y) > SKEW;
  return { name, wide, distance, skew };
}
