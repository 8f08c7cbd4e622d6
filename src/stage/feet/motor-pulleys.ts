import type { Topic } from "../fact.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/** Returns the pulleys on the motor's shaft from the plate up: they fix the planes of all loops. */
export function motorPulleys(_plan: Plan): Topic & { readonly pulleys: readonly MotorPulley[] } {
  return { pulleys: [], sections: [], diagnostics: [] };
}
