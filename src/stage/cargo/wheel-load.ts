import type { Point } from "../../mechanics/point.ts";
import type { Plan } from "../schema/index.ts";
import { casesOf, type LoadCase } from "./cases.ts";
import { massesOf } from "./masses.ts";
import { nearestCarried, type Support } from "./supports.ts";

/** What the wheels must hold: a weight and how far it acts beside what the screws can push against. N, mm. */
export interface WheelLoad {
  readonly name: string;
  readonly weight: number;
  /** From the place where pushing screws carry the weight to the place where it acts. */
  readonly lever: Point;
}

/** Nuts push up and hold no moment: wheels hold the weight times its distance from the area between the screws. */
export function wheelLoadOf(screws: readonly Support[], { name, weight, centre }: LoadCase): WheelLoad {
  const held = nearestCarried(screws, centre);
  return { name, weight, lever: { x: centre.x - held.x, y: centre.y - held.y } };
}

/** Returns what the wheels must hold in each case. */
export function wheelLoads(plan: Plan): readonly WheelLoad[] {
  const screws = Object.entries(plan.screws).map(([name, { at }]) => ({ name, x: at[0], y: at[1] }));
  return casesOf(plan, massesOf(plan).masses).map((each) => wheelLoadOf(screws, each));
}

/** Moment on the wheels, N·mm. */
export const momentOf = ({ weight, lever }: WheelLoad) => weight * Math.hypot(lever.x, lever.y);

/** Returns the case that loads the wheels most. */
export function worstWheelLoad(plan: Plan): WheelLoad {
  const none: WheelLoad = { name: "empty", weight: 0, lever: { x: 0, y: 0 } };
  return wheelLoads(plan).reduce((worst, each) => {
    const more = momentOf(each) - momentOf(worst);
    return more > 1e-9 || (more > -1e-9 && each.weight > worst.weight) ? each : worst;
  }, none);
}
