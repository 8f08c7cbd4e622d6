import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Topic } from "../fact.ts";
import type { Doubts } from "../frame/doubts.ts";
import { isTouched, type Unread } from "../frame/unread.ts";
import type { PlacedPart, PrinterOf, Stage } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
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
  /** Keys of the plan without which nothing certain comes of it. */
  readonly reads: readonly (keyof Plan)[];
  readonly from: (stage: Partless, printer: PrinterOf) => Made;
}

/**
 * Parts that come out the same stay separate entries: each has its place, and equal parameters give an equal hash, by
 * which whoever writes them sees that one file printed twice will do.
 */
export const SOURCES: readonly PartSource[] = [
  { family: "screw-foot", reads: [], from: ({ feet }) => ({ parts: feet.map(({ part }) => part), diagnostics: [] }) },
  { family: "tram-mount", reads: ["printers", "stock", "plate", "mount"], from: tramMounts },
  {
    family: "wheel-plate",
    reads: ["printers", "stock", "screws", "bars", "plate", "print", "masses", "travel", "carriages", "carriage"],
    from: wheelPlates,
  },
];

/** Returns all printed parts of the machine as worked out, with what their families find wrong at the plan's places. */
export function partsOf(
  stage: Partless,
  printer: PrinterOf,
  doubts: Pick<Doubts, "mounts" | "carriages"> = { mounts: new Set(), carriages: new Set() },
  unread: Unread = [],
): Topic & Made & { readonly designed: readonly DesignedPart[] } {
  const certain = ({ path: [block, one, two] }: { readonly path: Path }) => {
    if (block === "plate" && one === "mounts") return !doubts.mounts.has(String(two));
    return block !== "carriages" || !doubts.carriages.has(String(one));
  };
  const made = SOURCES.filter(({ reads }) => !isTouched(unread, ...reads)).map(({ from }) => from(stage, printer));
  const parts = made.flatMap((each) => each.parts).filter(certain);
  const designed = parts.flatMap((part) => designOf(part, printer));
  const refused = made.flatMap((each) => each.diagnostics).filter(certain);
  return {
    parts,
    designed,
    sections: [],
    diagnostics: [...refused, ...designed.flatMap((each) => findingsOf(each, stage.plan))],
  };
}
