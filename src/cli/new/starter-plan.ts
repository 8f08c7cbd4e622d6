import { BARS } from "../../catalogue/bars.ts";
import { row } from "../../core/table.ts";
import type { Answers } from "./answers.ts";

/** A place in plan, mm. */
export type Spot = readonly [number, number];

/** What may be moved until a belt that is sold fits, mm; `along` is a share of the span the motor stands at. */
export interface Attempt {
  readonly along: number;
  readonly out: number;
  readonly inset: number;
}

/** The measures of a starter's frame, mm. */
export interface Frame {
  readonly width: number;
  readonly depth: number;
  readonly barWidth: number;
  readonly barHeight: number;
  /** Rounds to what a tape shows: 0.5 mm, or 1/16 in. */
  readonly snap: (value: number) => number;
  readonly armFront: number;
  readonly armBack: number;
  readonly mountFront: number;
  readonly lowest: number;
}

/** What stands between things of a starter, mm: taken from machines that work out without an error. */
const SCREW_TO_BAR = 32;
const ARM_TO_BAR = 70;
const MOUNT_TO_ARM = 19;
const MOUNT_TO_EDGE = 28;
const PLATE_TO_FRAME = 80;
const POST_TO_SIDE = 20.5;
const LOWEST = 100;

/** Returns the frame round a plate. */
export function frameOf({ bar, units, plate }: Answers): Frame {
  const { width: barWidth, height: barHeight } = row(BARS, bar).values;
  const snap = snapper(units);
  const armFront = barWidth + snap(ARM_TO_BAR);
  const mountFront = armFront + barWidth / 2 + snap(MOUNT_TO_ARM);
  const depth = 2 * (mountFront - snap(MOUNT_TO_EDGE)) + plate[1];
  const width = plate[0] + 2 * (barWidth + snap(PLATE_TO_FRAME));
  const lowest = snap(LOWEST);
  return { width, depth, barWidth, barHeight, snap, armFront, armBack: depth - armFront, mountFront, lowest };
}

function snapper(units: Answers["units"]): (value: number) => number {
  const step = units === "in" ? 25.4 / 16 : 0.5;
  return (value) => Math.round(value / step) * step;
}

type Ends = readonly [from: readonly number[], to: readonly number[]];

/** Returns the bars by their names. */
export function barsOf(frame: Frame, { bar, screws, lift }: Answers): Record<string, object> {
  const { width, depth, barWidth: w, barHeight: h, armFront, armBack, lowest, snap } = frame;
  const [low, high] = [-h / 2, lowest + h / 2];
  const end = w / 2 + snap(POST_TO_SIDE) + (snap(POST_TO_SIDE) < POST_TO_SIDE ? snap(1) : 0);
  const side = end + w / 2;
  const top = lowest + lift + snap(150);
  const level = (from: Spot, to: Spot): object => ({ bar, from: [...from, low], to: [...to, low] });
  const moving = (from: Spot, to: Spot): object => ({ bar, from: [...from, high], to: [...to, high], moves: true });
  const post = (x: number): object => ({ bar: "V 20x20", from: [x, depth / 2, 0], to: [x, depth / 2, top] });
  return {
    front: level([0, w / 2], [width, w / 2]),
    back: level([0, depth - w / 2], [width, depth - w / 2]),
    left: level([w / 2, w], [w / 2, depth - w]),
    right: level([width - w / 2, w], [width - w / 2, depth - w]),
    ...(screws === 2 ? footBars(frame, bar) : {}),
    "post-left": post(w / 2),
    "post-right": post(width - w / 2),
    "arm-front": moving([end, armFront], [width - end, armFront]),
    "arm-back": moving([end, armBack], [width - end, armBack]),
    "side-left": moving([side, armFront + w / 2], [side, armBack - w / 2]),
    "side-right": moving([width - side, armFront + w / 2], [width - side, armBack - w / 2]),
  };
}

/** Two screws stand beside the posts, each on a bar of its own; a light one is twice as high, so that it sinks less. */
function footBars({ width, depth, barWidth: w, snap }: Frame, bar: string): Record<string, object> {
  const own = bar === "20x20 slot 6" ? "20x40 slot 6" : bar;
  const z = -row(BARS, own).values.height / 2;
  const x = 1.5 * w + snap(2);
  const ends = (at: number): Ends => [
    [at, w, z],
    [at, depth - w, z],
  ];
  const made = ([from, to]: Ends) => ({ bar: own, from, to });
  return { "screw-left": made(ends(x)), "screw-right": made(ends(width - x)) };
}

/** Returns where the screws stand, in the order in which a belt round all of them meets them. */
export function screwSpots({ width, depth, barWidth: w, snap }: Frame, screws: number, inset: number) {
  const near = w + snap(SCREW_TO_BAR);
  const edge = w + snap(50 + inset);
  const beside = 2 * w + snap(2) + snap(SCREW_TO_BAR);
  const spots: Record<string, { readonly at: Spot; readonly bar: string }> =
    screws === 2
      ? {
          L: { at: [beside, depth / 2], bar: "screw-left" },
          R: { at: [width - beside, depth / 2], bar: "screw-right" },
        }
      : {
          A: { at: [edge, near], bar: "front" },
          B: { at: [width - edge, near], bar: "front" },
          C: { at: [screws === 3 ? width / 2 : width - edge, depth - near], bar: "back" },
          ...(screws === 3 ? {} : { D: { at: [edge, depth - near] as Spot, bar: "back" } }),
        };
  return spots;
}
