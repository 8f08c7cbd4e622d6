import type { Diagnostic } from "../core/diagnostic.ts";
import { lengthKeys } from "./length-keys.ts";
import type { Plan } from "./schema/index.ts";
import { placesWithUnits, withUnits } from "./with-units.ts";

/**
 * Returns what was found in a plan so that what is to be set means the same where it is typed: a plan in inches takes
 * bare numbers for inches, so there lengths have their unit, mm. Of a plan in mm everything stays as it is.
 */
export function inPlanUnits(found: readonly Diagnostic[], { units }: Pick<Plan, "units">): Diagnostic[] {
  if (units === "mm" || found.length === 0) return [...found];
  const lengths = lengthKeys();
  return found.map((one) => ({ ...one, says: placesWithUnits(one.says), set: withUnits(one.set, lengths) }));
}
