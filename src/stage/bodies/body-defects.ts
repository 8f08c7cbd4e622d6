import type { Defect } from "../../core/defects.ts";

/** What may be wrong between the bodies of the assembled machine. */
export const BODY_DEFECTS = {
  "bodies-clash": {
    what: "two bodies of the assembled machine stand in one another",
    why: "two things cannot be in one place: the machine cannot be put together, or runs into itself",
    set: "the place of one of the two, by what the message says they are deep in one another",
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
