import { isRefusal, type Refusal } from "../core/calculation.ts";
import { tidy } from "../core/rounding.ts";
import { beltSeat } from "./belt-seat.ts";
import { brief } from "./bounded.ts";

export interface SeatQuestion {
  readonly plane: number;
  readonly pulley: number;
  readonly groove: number;
  readonly flange: number;
  readonly hub: number;
  readonly collar: number;
  readonly bearing: number;
  /** Washer stacks that may be used, each a list of thicknesses, mm. */
  readonly stacks: readonly (readonly number[])[];
  readonly lowest: number;
  readonly highest: number;
}

export interface SeatCandidate {
  readonly hub: "up" | "down";
  readonly washers: readonly number[];
  readonly seat: number;
  /** Why it is out; undefined when it fits. */
  readonly lost: string | undefined;
}

const GUARD = 1e-6;

/**
 * Returns every way to put a pulley on its seat: hub up or down with each washer stack, those that fit first, then the
 * lowest seat (stiffer and cheaper), then the fewest washers. The first is the choice when it fits.
 *
 * Units: mm. Refuses pulley data that contradict each other. Source: plane geometry; the order is a design rule.
 */
export function seatCandidates(question: SeatQuestion): readonly SeatCandidate[] | Refusal {
  const { stacks, lowest, highest, ...stack } = question;
  const candidates: SeatCandidate[] = [];
  for (const washers of stacks) {
    const sum = tidy(washers.reduce((total, thickness) => total + thickness, 0));
    const seats = beltSeat.compute({ ...stack, washers: sum });
    if (isRefusal(seats)) return seats;
    for (const hub of ["down", "up"] as const) {
      const seat = tidy(hub === "up" ? seats.seatUp : seats.seatDown);
      if (!Number.isFinite(seat)) return { refused: "the belt plane is too far away to hold" };
      candidates.push({ hub, washers, seat, lost: whyLost(seat, lowest, highest) });
    }
  }
  return candidates.sort(better);
}

function whyLost(seat: number, lowest: number, highest: number): string | undefined {
  if (seat < lowest - GUARD) return `the seat is ${brief(lowest - seat)} mm too low`;
  return seat > highest + GUARD ? `the seat is ${brief(seat - highest)} mm too high` : undefined;
}

function better(a: SeatCandidate, b: SeatCandidate): number {
  const out = ({ lost }: SeatCandidate) => Number(lost !== undefined);
  return out(a) - out(b) || a.seat - b.seat || a.washers.length - b.washers.length;
}
