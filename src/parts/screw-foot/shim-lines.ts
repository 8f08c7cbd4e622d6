import type { Bearing } from "../../catalogue/bearings.ts";
import { SHIM_RINGS } from "../../catalogue/shim-rings.ts";
import { tidy } from "../../core/rounding.ts";
import type { HardwareLine } from "../family.ts";
import { SHIMS } from "./derive/stack.ts";

/** Returns the rings to buy that together lie so high under a bearing, mm: the thickest first; none for 0. */
export function shimLines(bearing: Bearing, height: number): HardwareLine[] {
  const lines: HardwareLine[] = [];
  let left = height;
  for (const thickness of [...SHIMS].sort((a, b) => b - a)) {
    const count = Math.floor(left / thickness + 1e-6);
    if (count > 0) lines.push({ item: `${shimToBuy(bearing, thickness)} under the bearing`, count });
    left -= count * thickness;
  }
  return lines;
}

/** A shim clears the inner ring's face by this much, mm across. */
const CLEAR = 0.5;

/** The widest ring of the table that goes into the pocket and stays off the inner ring; else its limits. */
function shimToBuy({ outside, innerLand, outerLand }: Bearing, thickness: number): string {
  const inner = Math.ceil(10 * (innerLand + CLEAR)) / 10;
  const fitting = SHIM_RINGS.rows
    .map(({ values }) => values)
    .filter((ring) => ring.thickness === thickness && ring.hole >= inner)
    .filter((ring) => ring.outside <= outside + 0.1 && ring.outside > outerLand + CLEAR);
  const [widest] = fitting.sort((a, b) => b.outside - a.outside);
  if (widest === undefined) {
    return `shim ring cut from ${thickness} sheet, ${tidy(inner)} or more inside, ${tidy(outside)} or less outside,`;
  }
  return `shim ring ${widest.hole} x ${widest.outside} x ${thickness}`;
}
