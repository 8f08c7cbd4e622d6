import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Topic } from "../fact.ts";
import { rounded } from "../frame/footing.ts";
import { touchedNames, type Unread } from "../frame/unread.ts";
import type { MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { planeFacts, planeLines } from "./plane-facts.ts";
import { pulleyFlaws, sharedFlange } from "./pulley-flaws.ts";

/** Returns the pulleys on the motor's shaft from the plate up: they fix the planes of all loops. */
export function motorPulleys(plan: Plan, unread: Unread = []): Topic & { readonly pulleys: readonly MotorPulley[] } {
  const pulleys = stacked(plan);
  const facts = planeFacts(plan, pulleys);
  return {
    pulleys,
    sections: [{ title: "Belt planes", facts, lines: planeLines(pulleys) }],
    diagnostics: [...onePulleyALoop(plan, unread), ...pulleyFlaws(plan, pulleys)],
  };
}

/** Each pulley stands on the air over the one below; a double pulley's sections share the flange between them. */
function stacked({ motor }: Plan): MotorPulley[] {
  const stack: MotorPulley[] = [];
  for (const [index, { loop, pulley, hub, gap, commonFlange }] of motor.pulleys.entries()) {
    const { toothWidth, flangeThickness, height } = pulley.values;
    const below = stack.at(-1);
    const shared = commonFlange && below !== undefined;
    const base = below?.top ?? motor.plateTop;
    const bottom = rounded(shared ? base - sharedFlange(motor.pulleys, index) : base + gap);
    const offset = flangeThickness + toothWidth / 2;
    const plane = rounded(bottom + (hub === "up" ? offset : height - offset));
    stack.push({ loop, pulley, hub, bottom, top: rounded(bottom + height), plane });
  }
  return stack;
}

/** As many loops without a pulley as there are pulleys of strange loops are what those were meant for. */
function onePulleyALoop({ motor, loops }: Plan, unread: Unread): Diagnostic[] {
  const names = [...Object.keys(loops), ...touchedNames(unread, "loops")];
  const strange = motor.pulleys.filter(({ loop }) => !names.includes(loop)).length;
  const bare = Object.keys(loops).filter((name) => motor.pulleys.every(({ loop }) => loop !== name)).length;
  return Object.keys(loops).flatMap((loop) => {
    const on = motor.pulleys.flatMap((one, index) => (one.loop === loop ? [index] : []));
    if (on.length === 1 || (on.length === 0 && bare <= strange)) return [];
    const [, second] = on;
    if (second === undefined)
      return [
        stageDefect("loop-without-motor-pulley", {
          level: "error",
          path: ["loops", loop],
          says: `no pulley on the motor turns ${loop}`,
          set: `loop: ${loop} at one more entry of motor.pulleys`,
        }),
      ];
    const free = Object.keys(loops).find((one) => !motor.pulleys.some((pulley) => pulley.loop === one));
    return [
      stageDefect("loop-with-two-motor-pulleys", {
        level: "error",
        path: ["motor", "pulleys", second, "loop"],
        says: `${on.length} pulleys on the motor turn ${loop}`,
        found: { value: on.length, unit: "" },
        limit: { value: 1, unit: "" },
        set: free === undefined ? "one pulley on the motor for each loop" : `loop: ${free}`,
      }),
    ];
  });
}
