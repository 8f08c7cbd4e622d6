import { isRefusal, type Refusal } from "../../../core/calculation.ts";
import { tidy } from "../../../core/rounding.ts";
import { type SeatCandidate, seatCandidates } from "../../../mechanics/seat-candidates.ts";
import { shimForSeat } from "../../../mechanics/shim-for-seat.ts";
import { layerAbove, layerBelow, layerNearest } from "../../../printing/layers.ts";
import type { Printer } from "../../../printing/printer.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Housing } from "./housing.ts";

export interface Stack {
  /** Which way the hub points. */
  readonly hubPoints: "up" | "down";
  readonly washerStack: number;
  readonly collarHeight: number;
  readonly offsetUp: number;
  readonly offsetDown: number;
  readonly offsetUsed: number;
  readonly lowestSeat: number;
  readonly seatWanted: number;
  readonly bed: number;
  readonly seat: number;
  readonly shim: number;
  readonly residual: number;
  readonly rim: number;
  readonly bearingTop: number;
  readonly pulleyBottom: number;
  readonly pulleyTop: number;
  readonly plane: number;
  readonly setScrewHeight: number;
  readonly rimGap: number;
  readonly padDepth: number;
}

/** Shim rings that shops keep, mm. */
export const SHIMS: readonly number[] = [0.1, 0.2, 0.3, 0.5, 1];
/** A seat higher than this over the bar is an error. */
const TALLEST_SEAT = 60;
/** Beside an upright bar a foot is as tall as its floor and pocket, wherever it hangs. */
const ANY_HEIGHT = 1000;
/** A hardened pad under the screw's tip: thickness, and the diameter of its recess, mm. */
export const PAD = { thick: 3, recess: 10.1 };

/** Returns the heights of everything on the axis, from the bed level to the pulley's top. */
export function stackOf(given: Parameters, bought: Bought, fixed: Housing, printer: Printer): Stack {
  const { bearing, pulley } = bought;
  const padDepth = given.thrust === "tip" ? layerAbove(given.tipLength + PAD.thick, printer) : 0;
  const lowestSeat = lowestSeatOf(given, bought, fixed.plate, padDepth, printer);
  const chosen = choose(given, bought, lowestSeat);
  const { hubPoints, washerStack, collarHeight, offsetUp, offsetDown } = chosen;
  const offsetUsed = hubPoints === "up" ? offsetUp : offsetDown;
  const seatWanted = tidy(given.beltPlane - offsetUsed - washerStack - collarHeight - bearing.width);
  const level = levels(given, bought, fixed.plate, seatWanted, padDepth, printer);
  const bearingTop = level.seat + level.shim + bearing.width;
  const pulleyBottom = bearingTop + washerStack + collarHeight;
  const rim = level.seat + fixed.pocketDepth;
  const screwUp = hubPoints === "up" ? pulley.height - pulley.setScrewFromEnd : pulley.setScrewFromEnd;
  return {
    ...chosen,
    offsetUsed,
    lowestSeat,
    seatWanted,
    ...level,
    rim,
    bearingTop,
    pulleyBottom,
    pulleyTop: pulleyBottom + pulley.height,
    plane: pulleyBottom + offsetUsed,
    setScrewHeight: pulleyBottom + screwUp,
    rimGap: pulleyBottom - rim,
    padDepth,
  };
}

/** Whether the bar lies under the screw's tip. */
export function overBar({ mount, offset }: Parameters, { bar, end }: Bought): boolean {
  return mount === "on-top" && offset < bar.width / 2 + end / 2 + 1;
}

function lowestSeatOf(given: Parameters, bought: Bought, plate: number, padDepth: number, printer: Printer): number {
  const { mount, floor, tipLength, tipRelief, lowestZ } = given;
  const { height } = bought.bar;
  const tip = padDepth > 0;
  switch (mount) {
    case "on-side":
    case "in-corner":
      return -height + floor + 2 + padDepth;
    case "on-top":
      return overBar(given, bought) && !tip ? Math.max(floor, tipLength + tipRelief) : floor + padDepth;
    case "on-post":
      return lowestZ + layerAbove(floor + padDepth, printer);
    case "under":
      return -height - plate + floor + padDepth;
  }
}

type Chosen = Pick<Stack, "hubPoints" | "washerStack" | "collarHeight" | "offsetUp" | "offsetDown">;

/** Hub down gives the lower seat, so it is taken where that seat is high enough; the user's word goes before that. */
function choose(given: Parameters, bought: Bought, lowest: number): Chosen {
  const { pulley, washers } = bought;
  const washerStack = tidy(washers.reduce((sum, { thickness }) => sum + thickness, 0));
  const collarHeight = collarOf(given, bought);
  const offsetUp = pulley.flangeThickness + pulley.toothWidth / 2;
  const common = { washerStack, collarHeight, offsetUp, offsetDown: pulley.height - offsetUp };
  if (given.hub !== "auto") return { ...common, hubPoints: given.hub };
  const candidates = seatsOf(given, bought, [washers.map(({ thickness }) => thickness)], lowest);
  const highest = tallestSeat(given);
  return { ...common, hubPoints: isRefusal(candidates) ? "down" : best(candidates, lowest, highest).hub };
}

const collarOf = ({ thrust }: Parameters, { collar }: Bought) => (thrust === "collar" ? collar.width : 0);

/**
 * Returns the seat of every way to stack a foot, hub up and down on each stack of rings, those that fit first. mm
 *
 * `lowest` is the foot's own lowest seat; how high a seat may be depends on what carries the foot.
 */
export function seatsOf(
  given: Parameters,
  bought: Bought,
  stacks: readonly (readonly number[])[],
  lowest: number,
): readonly SeatCandidate[] | Refusal {
  const { pulley, bearing } = bought;
  return seatCandidates({
    plane: given.beltPlane,
    pulley: pulley.height,
    groove: pulley.toothWidth,
    flange: pulley.flangeThickness,
    // The measured height wins over the sum of its parts; a sum that is off is a check of its own.
    hub: Math.max(0, pulley.height - 2 * pulley.flangeThickness - pulley.toothWidth),
    collar: collarOf(given, bought),
    bearing: bearing.width,
    stacks,
    lowest,
    highest: tallestSeat(given),
  });
}

/** Returns the highest seat that a foot may have, mm: over its bar, or on a post over the datum. */
export const tallestSeat = ({ mount }: Pick<Parameters, "mount">) => (mount === "on-post" ? ANY_HEIGHT : TALLEST_SEAT);

/** The first that fits; when none does, the one that misses by least. */
function best(candidates: readonly SeatCandidate[], lowest: number, highest: number): Pick<SeatCandidate, "hub"> {
  const off = ({ seat }: SeatCandidate) => Math.max(lowest - seat, seat - highest);
  const fitting = candidates.find(({ lost }) => lost === undefined);
  return fitting ?? [...candidates].sort((a, b) => off(a) - off(b))[0] ?? { hub: "down" };
}

type Levels = Pick<Stack, "bed" | "seat" | "shim" | "residual">;

/** A free lower edge is moved so that the seat is a layer boundary; a mating face on the bed fixes the layers. */
function levels(
  { mount, floor }: Parameters,
  { bar }: Bought,
  plate: number,
  wanted: number,
  padDepth: number,
  printer: Printer,
): Levels {
  const free = { seat: wanted, shim: 0, residual: 0 };
  if (mount === "on-side" || mount === "in-corner") {
    const height = Math.max(printer.firstLayer, layerBelow(wanted + bar.height, printer));
    return { ...free, bed: tidy(wanted - height) };
  }
  if (mount === "on-post") return { ...free, bed: tidy(wanted - layerAbove(floor + padDepth, printer)) };
  const bed = mount === "under" ? -bar.height - plate : 0;
  const answer = shimForSeat({ seat: wanted, bed, first: printer.firstLayer, layer: printer.layer }, SHIMS);
  if (!isRefusal(answer)) return { bed, seat: answer.printed, shim: answer.shim, residual: answer.residual };
  const seat = tidy(bed + layerNearest(wanted - bed, printer));
  return { bed, seat, shim: 0, residual: tidy(seat - wanted) };
}
