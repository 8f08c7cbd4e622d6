import type { Case } from "../family.ts";
import type { Sweep } from "../features/sweep.ts";
import type { Derived } from "./derive.ts";
import { type Fittings, fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";

/** A mount as the modelling needs it: the case, what is bought, and how the bolt slides. */
export interface Subject extends Case<Parameters, Derived> {
  readonly parts: Fittings;
  readonly sweep: Sweep;
}

/** Returns the direction of the slot in degrees. */
export function slotDirection(given: Parameters): number {
  return given.slotAngle ?? given.growthAngle;
}

export function subjectOf(each: Case<Parameters, Derived>): Subject {
  const along = each.given.type === "free" ? undefined : slotDirection(each.given);
  const sweep = { excursion: each.derived.halfTravel, along };
  return { ...each, parts: fittings(each.given), sweep };
}
