import type { Defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { BODY_DEFECTS } from "./bodies/body-defects.ts";
import { CARGO_DEFECTS } from "./cargo/cargo-defects.ts";
import { LOOP_DEFECTS } from "./loops/defects.ts";

/** Every defect of a whole machine: what it is, what happens if nothing is done, and the way out. */
export const STAGE_DEFECTS = {
  ...BODY_DEFECTS,
  "frame-bars-overlap": {
    what: "two bars of the frame stand in one another",
    why: "two bars cannot be in one place, so one of them was measured or typed wrong",
    set: "from: and to: of one of the two bars, by their middle lines",
    excusable: false,
  },
  "bar-joins-no-other": {
    what: "a bar touches no other bar that it could be joined to, nor is it bolted to a carriage",
    why: "nothing holds it in its place; most often it was cut or typed too short, or its height was mistaken",
    set: "from: and to: of the bar, so that it reaches another one",
    excusable: true,
  },
  "screw-axis-inside-bar": {
    what: "the axis of a screw runs through a bar",
    why: "the screw cannot go where the bar is",
    set: "at: of the screw, beside the bar",
    excusable: false,
  },
  "loop-without-motor-pulley": {
    what: "a loop for which no pulley stands on the motor's shaft",
    why: "nothing would turn the loop, and its belt plane is not known",
    set: "an entry of motor.pulleys with the name of the loop",
    excusable: false,
  },
  "loop-with-two-motor-pulleys": {
    what: "a loop for which two pulleys stand on the motor's shaft",
    why: "a loop runs in one plane, round one pulley of the motor",
    set: "loop: of one of the two pulleys",
    excusable: false,
  },
  "motor-pulleys-overlap": {
    what: "a hub of a pulley on the motor lies where two pulleys are said to share a flange",
    why: "two pulleys cannot be in one place, so the belt planes worked out from them would be wrong",
    set: "hub: of both pulleys so that the toothed ends meet, or commonFlange: false",
    excusable: false,
  },
  "motor-pulley-bore-off-shaft": {
    what: "the bore of a pulley on the motor is not as wide as the motor's shaft is thick",
    why: "what is too narrow does not go on, what is too wide runs out of true and slips on the flat",
    set: "a pulley with the bore of the shaft, and bore: as it is sold",
    excusable: false,
  },
  "motor-shaft-too-short": {
    what: "the motor's shaft ends inside the toothed part, or below the set screws, of a pulley on it",
    why: "what does not sit on the shaft wobbles or slips under the belt's pull",
    set: "a longer shaft, a thinner plate, less air between the pulleys, or a double pulley",
    excusable: true,
  },
  "hardware-data-disagrees": {
    what: "sizes of one bought item contradict each other, or those of two that belong together",
    why: "heights are worked out from these sizes; one of them is wrong, and the belt would be off its plane",
    set: "the sizes as measured",
    excusable: false,
  },
  "belt-plane-below-lowest-seat": {
    what: "the seat of a foot would come below the lowest that its mount allows, with every hub and ring tried",
    why: "the floor under the bearing would be too thin, or the screw would meet the bar",
    set: "a higher plate of the motor, a thinner bearing, or a mount that reaches lower",
    excusable: false,
  },
  "foot-stack-does-not-fit": {
    what: "no way of stacking bearing, rings and pulley puts a screw's pulley in the plane of its belt",
    why: "a foot that is built all the same would rub, hide its set screws or meet the stage",
    set: "what the first of the ways that were tried asks for",
    excusable: false,
  },
  "belt-planes-apart-in-loop": {
    what: "pulleys of one loop stand at different heights as printed, or a span runs at an angle to them",
    why: "the belt climbs to a flange and wears its edge",
    set: "a shim under the lower pulley, or a finer layer for the feet that are printed on their mating face",
    excusable: true,
  },
  ...LOOP_DEFECTS,
  ...CARGO_DEFECTS,
} as const satisfies Readonly<Record<string, Defect>>;

export type StageDefect = keyof typeof STAGE_DEFECTS;

/** Returns a case of such a defect; it matters for the reason that is told of the defect, or more closely for `why`. */
export function stageDefect(
  name: StageDefect,
  { why = STAGE_DEFECTS[name].why, ...found }: Omit<Diagnostic, "name" | "why"> & Partial<Pick<Diagnostic, "why">>,
): Diagnostic {
  return { name, why, ...found };
}
