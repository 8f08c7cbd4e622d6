import type { Diagnostic } from "../../core/diagnostic.ts";
import { hundredth } from "../frame/footing.ts";
import { type PlacedBar, placedBars } from "../frame/placed-bar.ts";
import type { Plan } from "../schema/index.ts";
import { told } from "../worked.ts";

/** What the stated lowest part may be off the bars of the stage without a word, mm. common practice */
const SILENT = 1;

/**
 * Returns whether `travel.lowest`, which the feet are kept under, disagrees with the bars of the stage. Bars that reach
 * lower are in the way of the feet; where none reaches so low it may be right: something else may hang there.
 */
export function lowestPart(plan: Plan): readonly Diagnostic[] {
  const { lowest } = plan.travel;
  const bars = placedBars(plan).filter(({ moves }) => moves);
  const [first] = [...bars].sort((one, other) => under(one) - under(other));
  if (first === undefined) return [];
  const bottom = hundredth(under(first));
  const off = lowest - bottom;
  if (Math.abs(off) <= SILENT) return [];
  const where = `${first.name}, the lowest bar of the stage, lies at ${bottom} mm, ${Math.abs(off).toFixed(1)} mm`;
  return told("stage-lowest-disagrees", ["travel", "lowest"], {
    level: off > 0 ? "warning" : "note",
    says: off > 0 ? `${where} lower than lowest: ${lowest}` : `${where} higher than lowest: ${lowest}`,
    set: off > 0 ? `lowest: ${bottom}` : `lowest: ${bottom}, unless something else of the stage hangs so low`,
    found: lowest,
    limit: bottom,
    unit: "mm",
  });
}

const under = ({ from, along, length, across, up, wide, high }: PlacedBar) =>
  Math.min(from[2], from[2] + along[2] * length) - (Math.abs(across[2]) * wide + Math.abs(up[2]) * high) / 2;
