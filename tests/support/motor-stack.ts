import { isRefusal } from "../../src/core/calculation.ts";
import { motorPlane } from "../../src/mechanics/index.ts";
import type { Plan } from "../../src/stage/index.ts";
import type { MotorPulley } from "../../src/stage/machine.ts";

/** Returns the pulleys on the motor of a plan from the plate up, for tests of what follows from them. */
export function stackedPulleys(plan: Plan): MotorPulley[] {
  let below = plan.motor.plateTop;
  return plan.motor.pulleys.map(({ loop, pulley, hub, gap }) => {
    const { flangeThickness, toothWidth, height } = pulley.values;
    const fromToothEnd = flangeThickness + toothWidth / 2;
    const offset = hub === "up" ? fromToothEnd : height - fromToothEnd;
    const found = motorPlane.compute({ top: below, gap, offset });
    if (isRefusal(found)) throw new RangeError(found.refused);
    const bottom = below + gap;
    below = bottom + height;
    return { loop, pulley, hub, bottom, top: below, plane: found.plane };
  });
}
