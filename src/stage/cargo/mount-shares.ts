import { isRefusal, type Refusal } from "../../core/calculation.ts";
import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import type { Point } from "../../mechanics/point.ts";
import type { Plan } from "../schema/index.ts";
import { massesOf } from "./masses.ts";
import { type Shares, type Support, sharesOn } from "./supports.ts";

/** Returns the mounts of the plate in plan, mm. */
export function mountsOf({ plate: { mounts } }: Plan): readonly Support[] {
  return Object.entries(mounts).map(([name, { at }]) => ({ name, x: at[0], y: at[1] }));
}

/** Weight of plate, sheet and heater, N. */
export function plateWeight(plan: Plan): number {
  return (massesOf(plan).plate + plan.plate.sheet) * GRAVITY;
}

/** Returns how the mounts share a weight that acts at a place on the plate; five or six are taken to share it alike. */
export function sharesOnMounts(plan: Plan, weight: number, at: Point): Shares | Refusal {
  const mounts = mountsOf(plan);
  if (mounts.length > 4) {
    const share = weight / mounts.length;
    return Object.fromEntries(mounts.map(({ name }) => [name, { most: share, least: share }]));
  }
  return sharesOn(mounts, weight, at);
}

/** Returns what plate, sheet and heater weigh on each mount, N; alike on all where statics has no answer. */
export function plateShares(plan: Plan): Readonly<Record<string, number>> {
  const weight = plateWeight(plan);
  const [x, y] = plan.plate.at;
  const shares = sharesOnMounts(plan, weight, { x, y });
  const mounts = mountsOf(plan);
  return Object.fromEntries(
    mounts.map(({ name }) => [name, isRefusal(shares) ? weight / mounts.length : (shares[name]?.most ?? 0)]),
  );
}
