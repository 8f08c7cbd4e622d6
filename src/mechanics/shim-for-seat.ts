import { isRefusal, type Refusal } from "../core/calculation.ts";
import { tidy } from "../core/rounding.ts";
import { seatOnLayer } from "./seat-on-layer.ts";

export interface ShimmedSeat {
  readonly printed: number;
  /** Shim to lay under the bearing, mm; 0 for none. */
  readonly shim: number;
  /** Seat with its shim less the seat wanted; positive puts the belt high. */
  readonly residual: number;
}

/** A residual up to this is left as it is. */
const SILENT = 0.1;

/**
 * Returns the seat as printed and the shim it needs. Up to 0.1 mm off nothing is done; beyond, the seat goes down to
 * the boundary below and the stock shim nearest to the shortfall goes under the bearing.
 *
 * Units: mm. Refuses what seatOnLayer refuses. Source: plane geometry; the 0.1 is a design rule.
 */
export function shimForSeat(
  wanted: { readonly seat: number; readonly bed: number; readonly first: number; readonly layer: number },
  shims: readonly number[],
): ShimmedSeat | Refusal {
  const seat = seatOnLayer.compute(wanted);
  if (isRefusal(seat)) return seat;
  if (Math.abs(seat.residual) <= SILENT + 1e-6) {
    return { printed: tidy(seat.printed), shim: 0, residual: tidy(seat.residual) };
  }
  const shortfall = wanted.seat - seat.below;
  const off = (shim: number) => Math.abs(shim - shortfall);
  const shim = [0, ...shims].reduce((best, each) => (off(each) < off(best) - 1e-9 ? each : best));
  return { printed: tidy(seat.below), shim, residual: tidy(shim - shortfall) };
}
