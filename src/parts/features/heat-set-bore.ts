import { revolved, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";

/** Chamfer at the mouth that centres the insert, and what the bore is deeper than the insert, mm. */
const LEAD = 0.5;
const DEEPER = 1;
const OVERRUN = 1;

/** A heat-set insert with an upright axis through the origin. Sizes in mm, nominal. */
export interface InsertSeat {
  /** Hole that the maker asks for, and length of the insert. */
  readonly hole: number;
  readonly length: number;
  /** Height of the face it is set in from, and which way the bore runs. */
  readonly mouth: number;
  readonly into: "up" | "down";
  /** A bolt hole beyond the bore: its wanted diameter and how far it runs; leave it out for a blind bore. */
  readonly beyond?: { readonly diameter: number; readonly to: number };
}

/**
 * Returns the stepped cut of a heat-set insert: lead-in, bore, a 45 degree cone in the last millimetre that prints
 * without support, and the bolt's hole beyond it.
 */
export function heatSetBore(seat: InsertSeat, printer: Printer): Solid {
  const { hole, length, mouth, into, beyond } = seat;
  const radius = uprightHole(hole, printer) / 2;
  const narrow = beyond === undefined ? Math.max(0, radius - DEEPER) : uprightHole(beyond.diameter, printer) / 2;
  const way = into === "up" ? 1 : -1;
  const end = mouth + way * (length + DEEPER);
  const cone = end - way * Math.max(0, radius - narrow);
  const tip = beyond === undefined ? end : beyond.to + way * OVERRUN;
  const outline = [
    [0, mouth - way * OVERRUN],
    [radius + LEAD, mouth - way * OVERRUN],
    [radius + LEAD, mouth],
    [radius, mouth + way * LEAD],
    [radius, cone],
    [narrow, end],
    [narrow, tip],
    [0, tip],
  ] as const;
  const distinct = outline.filter(([r, z], at) => at === 0 || r !== outline[at - 1]?.[0] || z !== outline[at - 1]?.[1]);
  return revolved(into === "up" ? distinct : distinct.reverse(), "around", radius);
}
