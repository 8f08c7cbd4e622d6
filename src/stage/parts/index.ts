import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Topic } from "../fact.ts";
import type { PlacedPart, PrinterOf, Stage } from "../machine.ts";
import { type DesignedPart, designOf, findingsOf } from "./design-of.ts";
import { tramMounts } from "./tram-mounts.ts";
import { wheelPlates } from "./wheel-plates.ts";

/** The machine as far as it is known when its parts are asked for. */
export type Partless = Omit<Stage, "parts" | "sections" | "diagnostics">;

/** Parts of one family, and what their own parameters are refused for. */
export interface Made {
  readonly parts: readonly PlacedPart[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Where the parts of one family come from. A part that is added later joins by one entry in `SOURCES`. */
export interface PartSource {
  readonly family: string;
  readonly from: (stage: Partless, printer: PrinterOf) => Made;
}

/**
 * Parts that come out the same stay separate entries: each has its place, and equal parameters give an equal hash, by
 * which whoever writes them sees that one file printed twice will do.
 */
export const SOURCES: readonly PartSource[] = [
  { family: "screw-foot", from: ({ feet }) => ({ parts: feet.map(({ part }) => part), diagnostics: [] }) },
  { family: "tram-mount", from: tramMounts },
  { family: "wheel-plate", from: wheelPlates },
];

/** Returns all printed parts of the machine as worked out, with what their families find wrong at the plan's places. */
export function partsOf(
  stage: Partless,
  printer: PrinterOf,
): Topic & Made & { readonly designed: readonly DesignedPart[] } {
  const made = SOURCES.map(({ from }) => from(stage, printer));
  const parts = made.flatMap((each) => each.parts);
  const designed = parts.flatMap((part) => designOf(part, printer));
  const refused = made.flatMap((each) => each.diagnostics);
  return {
    parts,
    designed,
    sections: [],
    diagnostics: [...refused, ...designed.flatMap((each) => findingsOf(each, stage.plan))],
  };
}
