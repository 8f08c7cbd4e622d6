import type { Refusal } from "../core/calculation.ts";
import type { Point } from "./point.ts";

/** Standard gravity, m/s2 (exact by convention). */
export const GRAVITY = 9.80665;

export interface Mass extends Point {
  readonly mass: number;
}

/**
 * Returns the weight of several masses, N, and the place in plan where it acts, mm.
 *
 * `mass` is in kg. Refuses negative masses, none at all, and what is not a number. Source: statics.
 */
export function centreOfMass(masses: readonly Mass[]): (Point & { readonly weight: number }) | Refusal {
  if (masses.some(({ mass }) => !(mass >= 0))) return { refused: "a mass is below 0 kg or not a number" };
  const sum = masses.reduce((total, { mass }) => total + mass, 0);
  if (!(sum > 0)) return { refused: "there is no mass" };
  const x = masses.reduce((total, each) => total + each.mass * each.x, 0) / sum;
  const y = masses.reduce((total, each) => total + each.mass * each.y, 0) / sum;
  const weight = sum * GRAVITY;
  return [x, y, weight].every(Number.isFinite) ? { x, y, weight } : { refused: "a mass or place is not a number" };
}
