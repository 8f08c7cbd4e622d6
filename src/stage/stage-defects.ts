import type { Defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { CARGO_DEFECTS } from "./cargo/cargo-defects.ts";

/** Every defect of a whole machine: what it is, what happens if nothing is done, and the way out. */
export const STAGE_DEFECTS = {
  "frame-bars-overlap": {
    what: "two bars of the frame stand in one another",
    why: "two bars cannot be in one place, so one of them was measured or typed wrong",
    set: "from: and to: of one of the two bars, by their middle lines",
    excusable: false,
  },
  "screw-axis-inside-bar": {
    what: "the axis of a screw runs through a bar",
    why: "the screw cannot go where the bar is",
    set: "at: of the screw, beside the bar",
    excusable: false,
  },
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
