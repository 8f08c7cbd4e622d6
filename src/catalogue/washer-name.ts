import { findRow } from "../core/table.ts";
import { LARGE_WASHERS } from "./large-washers.ts";
import { WASHERS, type Washer } from "./washers.ts";

/**
 * Returns what a washer is called on a list of what to buy, the same wherever it goes: `M5 washer 10 x 1`, or `M5 large
 * washer 15 x 1.2` where it has the size of the large series. Outside x thickness, mm.
 */
export function washerName(thread: string, { outside, thickness }: Pick<Washer, "outside" | "thickness">): string {
  const large = findRow(LARGE_WASHERS, thread)?.values;
  const kind = large?.outside === outside && large.thickness === thickness ? "large washer" : "washer";
  return `${thread} ${kind} ${outside} x ${thickness}`;
}

/** Returns the same of the plain washer that goes with a thread. */
export function plainWasherName(thread: string): string {
  const plain = findRow(WASHERS, thread)?.values;
  return plain === undefined ? `${thread} washer` : washerName(thread, plain);
}
