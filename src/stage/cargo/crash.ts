import { NUT_FRICTION } from "../../mechanics/screw-locking.ts";
import { screwTorque } from "../../mechanics/screw-torque.ts";
import { stallForce } from "../../mechanics/stall-force.ts";
import type { Fact } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { worked } from "../worked.ts";
import type { ScrewDrive } from "./screw-drives.ts";

/** Flank angle of trapezoidal threads, deg. */
export const FLANK = 15;

/** Returns the torque of the stalled motor, N·m: the largest sold of its size where the plan states none. */
export function stallTorque({ motor }: Plan): number {
  return motor.torque ?? motor.motor.values.torqueLarge;
}

/** Returns the force of the stalled motor, N, the whole of it on one screw, nuts as slippery as they may be. */
export function crashForce(
  plan: Plan,
  drives: readonly ScrewDrive[],
): { readonly force: number; readonly facts: readonly Fact[] } {
  const forces = drives.map(({ name, ratio, screw, plan: own }) => {
    const { pitchDiameter, lead } = screw;
    const friction = NUT_FRICTION[own.nut][0];
    const thread = worked(screwTorque, { load: 1, pitchDiameter, lead, flank: FLANK, friction }, {});
    const inputs = { torque: stallTorque(plan), ratio, efficiency: thread.values?.efficiency ?? 0, lead };
    return worked(stallForce, inputs, {
      force: [`screw.${name}.crash`, `screw ${name}: force of the stalled motor, all of it on this screw`],
    });
  });
  return {
    force: Math.max(0, ...forces.map(({ values }) => values?.force ?? 0)),
    facts: forces.flatMap(({ facts }) => facts),
  };
}
