import type { Defect } from "../../core/defects.ts";

/** What may be wrong between the bodies of the assembled machine. */
export const BODY_DEFECTS = {
  "bodies-clash": {
    what: "two bodies of the assembled machine stand in one another",
    why: "two things cannot be in one place: the machine cannot be put together, or runs into itself",
    set: "the place of one of the two, by what the message says they are deep in one another",
    excusable: true,
  },
  "belts-too-close": {
    what: "two belts pass each other with too little air",
    why: "belts flutter and wander between their flanges; two that touch wear each other through",
    set: "gap: of the upper pulley on the motor, so that the planes of the belts lie farther apart",
    excusable: true,
  },
  "belt-too-near-foreign-flange": {
    what: "a belt passes a pulley or idler of another loop with too little air",
    why: "a flange that turns against the edge of a belt saws it through",
    set: "gap: of the upper pulley on the motor, or hub: of the pulley the belt passes",
    excusable: true,
  },
  "pulley-bodies-collide": {
    what: "two pulleys or idlers on different axes stand with too little air between them",
    why: "flanges run out and axes lean under the belt's pull, and then they grind",
    set: "at: of one of the two, or a smaller pulley",
    excusable: true,
  },
  "belt-too-near-bracket": {
    what: "a belt passes a printed part with too little air",
    why: "a belt that rubs on plastic cuts into it, and the dust gets between the teeth",
    set: "a higher belt plane, or a part that ends lower",
    excusable: true,
  },
  "stage-meets-foot": {
    what: "at the bottom of its travel the stage comes too near a foot or what turns on it",
    why: "one lost step of the homing and the stage presses on the pulley with the whole force of the motor",
    set: "travel: lowest: higher, or a lower foot",
    excusable: true,
  },
} as const satisfies Readonly<Record<string, Defect>>;
