import { isRefusal, type Refusal } from "../../core/calculation.ts";
import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import type { Point } from "../../mechanics/point.ts";
import type { Plan } from "../schema/index.ts";
import { cornersOf } from "./cases.ts";
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

/** Returns what the print puts on each mount in the middle of the plate and at its corners, N; a refusal of statics. */
function printCases(plan: Plan): (Shares | Refusal)[] {
  const weight = plan.print * GRAVITY;
  const [x, y] = plan.plate.at;
  const places = [{ x, y }, ...cornersOf(plan).map(({ at }) => at)];
  return weight > 0 ? places.map((at) => sharesOnMounts(plan, weight, at)) : [];
}

/** Returns the most that the print puts on each mount, in the middle of the plate or at a corner, N. */
export function printShares(plan: Plan): Readonly<Record<string, number>> {
  return Object.fromEntries(mountsOf(plan).map(({ name }) => [name, printOn(plan, [name])]));
}

/** Returns the most that the print presses on some mounts together, at any one place, N; those it lifts left out. */
export function printOn(plan: Plan, mounts: readonly string[]): number {
  const totals = printCases(plan).map((shares) => {
    if (isRefusal(shares)) return plan.print * GRAVITY;
    return mounts.reduce((sum, name) => sum + Math.max(0, shares[name]?.most ?? 0), 0);
  });
  return Math.max(0, ...totals);
}

/** Returns the most that plate and print put on each mount, N. */
export function fullShares(plan: Plan): Readonly<Record<string, number>> {
  const print = printShares(plan);
  return Object.fromEntries(Object.entries(plateShares(plan)).map(([name, own]) => [name, own + (print[name] ?? 0)]));
}
