import { isRefusal } from "../../core/calculation.ts";
import { motorPlane } from "../../mechanics/motor-plane.ts";
import { planeSpacing } from "../../mechanics/plane-spacing.ts";
import { type Fact, factFrom } from "../fact.ts";
import { rounded } from "../frame/footing.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/**
 * Returns the belt planes over the datum, how far each lies over the one below, and the ends of each pulley. Of two
 * pulleys for one loop the lower one counts: the other is told of as a mistake.
 */
export function planeFacts(plan: Plan, pulleys: readonly MotorPulley[]): Fact[] {
  return pulleys.flatMap((pulley, index) => {
    if (pulleys.findIndex(({ loop }) => loop === pulley.loop) < index) return [];
    const below = pulleys[index - 1];
    const planned = plan.motor.pulleys[index];
    const spacing = below === undefined || planned === undefined ? [] : [spacingFact(below, pulley, planned)];
    return [planeFact(plan, pulley), ...spacing, ...endFacts(pulley)];
  });
}

function planeFact({ motor }: Plan, { loop, bottom, plane }: MotorPulley): Fact {
  const named = { key: `loop.${loop}.plane`, label: `belt plane of ${loop} over the datum` };
  const inputs = { top: motor.plateTop, gap: rounded(bottom - motor.plateTop), offset: rounded(plane - bottom) };
  const fact = factFrom(motorPlane, inputs, "plane", named);
  return isRefusal(fact) ? { ...named, value: plane, unit: "mm" } : { ...fact, value: rounded(fact.value) };
}

/** The calculation is for like pulleys; unlike ones are only subtracted. */
function spacingFact(below: MotorPulley, own: MotorPulley, planned: Plan["motor"]["pulleys"][number]): Fact {
  const named = {
    key: `loop.${own.loop}.spacing`,
    label: `${own.loop} over ${below.loop}`,
  };
  const value = rounded(own.plane - below.plane);
  const { height: pulley, toothWidth: groove, flangeThickness: flange, hubLength: hub } = own.pulley.values;
  const inputs = { pulley, groove, flange, hub, gap: planned.gap };
  const fact = factFrom(planeSpacing, inputs, wayOf(below, own, planned.commonFlange), named);
  const same = !isRefusal(fact) && Math.abs(fact.value - value) < 1e-6;
  return same ? { ...fact, value } : { ...named, value, unit: "mm" };
}

function wayOf(below: MotorPulley, own: MotorPulley, common: boolean): "double" | "same" | "toothed" | "hubs" {
  if (common) return "double";
  if (below.hub === own.hub) return "same";
  return below.hub === "down" ? "toothed" : "hubs";
}

function endFacts({ loop, bottom, top }: MotorPulley): Fact[] {
  return [
    { key: `motor.${loop}.bottom`, label: `lower end of ${loop}'s pulley on the motor`, value: bottom, unit: "mm" },
    { key: `motor.${loop}.top`, label: `upper end of ${loop}'s pulley on the motor`, value: top, unit: "mm" },
  ];
}

/** Returns the table of planes from the top down, one pulley a line. */
export function planeLines(pulleys: readonly MotorPulley[]): string[] {
  return [...pulleys]
    .reverse()
    .map(
      ({ loop, pulley, hub, bottom, top, plane }) =>
        `${plane.toFixed(2)} mm  ${loop}: motor, ${pulley.key}, hub ${hub}, from ${bottom.toFixed(2)} to ${top.toFixed(2)} mm`,
    );
}
