import type { Pulley } from "../../catalogue/pulleys.ts";
import type { Screw } from "../../catalogue/screws.ts";
import type { Item } from "../../core/item.ts";
import { schema as footSchema, type Parameters } from "../../parts/screw-foot/parameters.ts";
import type { Plan, PlanScrew } from "../schema/index.ts";

/** How the motor turns one screw. */
export interface ScrewDrive {
  readonly name: string;
  readonly loop: string;
  readonly plan: PlanScrew;
  readonly screw: Screw;
  readonly pulley: Item<Pulley>;
  readonly motorTeeth: number;
  /** Motor turns per turn of the screw. */
  readonly ratio: number;
}

/** Returns a parameter of a screw's foot as the plan gives it or the family has it; undefined where it is no value. */
export function footWord<Key extends keyof Parameters>(
  { foot, screws }: Plan,
  screw: string,
  key: Key,
): Parameters[Key] | undefined {
  const read = footSchema.shape[key].safeParse(screws[screw]?.foot[key] ?? foot[key]);
  return read.success ? (read.data as Parameters[Key]) : undefined;
}

/** Returns how the motor turns each screw; a screw that no loop joins to the motor is left out. */
export function screwDrives(plan: Plan): readonly ScrewDrive[] {
  return Object.entries(plan.screws).flatMap(([name, screw]) => {
    const loop = Object.entries(plan.loops).find(([, { nodes }]) => nodes.includes(name))?.[0];
    const own = plan.motor.pulleys.find((pulley) => pulley.loop === loop);
    const pulley = footWord(plan, name, "pulley");
    if (loop === undefined || own === undefined || pulley === undefined) return [];
    const motorTeeth = own.pulley.values.teeth;
    const ratio = pulley.values.teeth / motorTeeth;
    return [{ name, loop, plan: screw, screw: screw.screw.values, pulley, motorTeeth, ratio }];
  });
}
