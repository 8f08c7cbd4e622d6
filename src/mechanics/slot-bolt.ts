import { isRefusal, type Refusal } from "../core/calculation.ts";
import { down, tidy, up } from "../core/rounding.ts";
import { brief } from "./bounded.ts";
import { longestStock, nextStock } from "./next-stock.ts";
import { slotBoltWindow } from "./slot-bolt-window.ts";

export interface SlotBoltQuestion {
  /** Thickness of the plate under the washer, mm. */
  readonly plate: number;
  readonly washer: number;
  readonly diameter: number;
  readonly threadStart: number;
  readonly slotDepth: number;
  /** Bolt lengths that can be had, mm, in any order. */
  readonly stock: readonly number[];
  /** Layer height when the bolt's axis is vertical in print; leave it out for a horizontal axis. */
  readonly layer?: number | undefined;
}

export interface SlotBolt {
  readonly length: number;
  /** Depth of the counterbore for head and washer; 0 when none is needed. */
  readonly counterbore: number;
  /** Plastic left under the washer. */
  readonly floor: number;
}

const GUARD = 1e-6;

/**
 * Returns the bolt for a plate on a slot nut: the shortest stock length inside the window of slotBoltWindow, or, when
 * none lies inside, the longest that does not reach the slot's bottom with the counterbore that puts it into the middle
 * of the window. The counterbore is rounded down to a layer when its axis is vertical in print, else to 0.1 mm.
 *
 * Units: mm. Refuses a slot that is too shallow, a stock with no length short enough, and a counterbore that would
 * leave less than 3 mm or 0.6 d under the washer. Source: geometry; the 0.8 d and the 1 mm are common practice.
 */
export function slotBolt(question: SlotBoltQuestion): SlotBolt | Refusal {
  const { plate, washer, diameter, threadStart, slotDepth, stock, layer } = question;
  if (!(plate > 0)) return { refused: "the plate must have a thickness" };
  if (layer !== undefined && !(layer > 0)) return { refused: "the layer height must be above 0 mm" };
  const grip = plate + washer;
  const window = slotBoltWindow.compute({ grip, threadStart, diameter, slotDepth });
  if (isRefusal(window)) return window;
  const direct = nextStock(stock, window.shortest);
  if (direct !== undefined && direct <= window.longest + GUARD) return { length: direct, counterbore: 0, floor: plate };
  const length = longestStock(stock, window.longest);
  if (length === undefined) return { refused: `no bolt is ${brief(window.longest)} mm or shorter` };
  const middle = (window.shortest + window.longest) / 2 - length;
  const counterbore = steps(middle, layer).find((depth) => fits(length + depth, window));
  if (counterbore === undefined) return { refused: "no counterbore of whole layers puts a stock length in the window" };
  const floor = tidy(plate - counterbore);
  const least = Math.max(3, 0.6 * diameter);
  if (floor >= least - GUARD) return { length, counterbore, floor };
  const left = `a counterbore of ${counterbore} mm for M${diameter} x ${length} would leave ${floor} mm of plastic`;
  return { refused: `${left}, and ${tidy(least)} mm must stay` };
}

/** The depths to try: rounded down to a layer first; up when that leaves the bolt with too little thread. */
function steps(depth: number, layer: number | undefined): number[] {
  if (layer === undefined) return [tidy(Math.round(depth * 10) / 10), tidy(depth)];
  return [down(depth, layer), up(depth, layer)];
}

function fits(reach: number, window: { readonly shortest: number; readonly longest: number }): boolean {
  return reach >= window.shortest - GUARD && reach <= window.longest + GUARD;
}
