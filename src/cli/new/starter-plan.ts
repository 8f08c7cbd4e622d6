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
  /** Middle of the plate, and the lines on which its mounts stand. */
  readonly plateAt: Spot;
  readonly mountFront: number;
  readonly mountBack: number;
  /** Names of the moving bars that carry the mounts in front and behind. */
  readonly carriers: readonly [front: string, back: string];
  readonly lowest: number;
}

/** What stands between things of a starter, mm: taken from machines that work out without an error. */
const SCREW_TO_BAR = 32;
const ARM_TO_BAR = 70;
const MOUNT_TO_ARM = 19;
/** Mounts on the side of a large bar hold the plate lower than its top: there the plate ends before the bar. */
const MOUNT_TO_EDGE = { usual: 28, large: 18 };
const LARGE = 38;
const PLATE_TO_FRAME = 80;
const POST_TO_SIDE = 20.5;
const LOWEST = 100;

/** How far the arms may stand from the frame's bars, mm: the nuts on the screws are bolted to them. */
const ARM_FARTHEST = 100;

/** Returns the smallest frame round a plate, width and depth, mm. */
export function leastFrame({ bar, units, plate }: Pick<Answers, "bar" | "units" | "plate">): Spot {
  const { width } = row(BARS, bar).values;
  const snap = snapper(units);
  return [plate[0] + 2 * (width + snap(PLATE_TO_FRAME)), plate[1] + 2 * plateEdge(width, snap)];
}

const mountToEdge = (barWidth: number, snap: Frame["snap"]) =>
  snap(barWidth >= LARGE ? MOUNT_TO_EDGE.large : MOUNT_TO_EDGE.usual);

/** The plate's edge from the frame's outer face, where the arms stand as near to the frame as they may. */
const plateEdge = (barWidth: number, snap: Frame["snap"]) =>
  barWidth + snap(ARM_TO_BAR) + barWidth / 2 + snap(MOUNT_TO_ARM) - mountToEdge(barWidth, snap);

/**
 * Returns a frame with what stands in it. What it is deeper than the plate needs is shared by the arms first; beyond
 * that the plate has bars of its own: in front where two screws of three are, else in the middle.
 */
export function frameOf({ bar, units, plate, frame: [width, depth], screws }: Answers): Frame {
  const { width: barWidth, height: barHeight } = row(BARS, bar).values;
  const snap = snapper(units);
  const spare = Math.max(0, depth - plate[1] - 2 * plateEdge(barWidth, snap));
  const more = Math.min(spare / 2, snap(ARM_FARTHEST) - snap(ARM_TO_BAR));
  const own = spare - 2 * more > 0;
  const armFront = barWidth + snap(ARM_TO_BAR) + (own ? 0 : more);
  const edge = plateEdge(barWidth, snap) + (own ? (screws === 3 ? 0 : spare / 2) : more);
  const mountFront = edge + mountToEdge(barWidth, snap);
  const mountBack = edge + plate[1] - mountToEdge(barWidth, snap);
  const carriers = [own && screws !== 3 ? "plate-front" : "arm-front", own ? "plate-back" : "arm-back"] as const;
  const arms = { armFront, armBack: depth - armFront };
  const mounts = { plateAt: [width / 2, edge + plate[1] / 2] as const, mountFront, mountBack, carriers };
  return { width, depth, barWidth, barHeight, snap, ...arms, ...mounts, lowest: snap(LOWEST) };
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
    ...plateBars(frame, side + w / 2, moving),
    "side-left": moving([side, armFront + w / 2], [side, armBack - w / 2]),
    "side-right": moving([width - side, armFront + w / 2], [width - side, armBack - w / 2]),
  };
}

/** Returns the bars that carry the plate where the arms stand too far from it, mounts on their inner sides. */
function plateBars(
  { width, barWidth: w, mountFront, mountBack, carriers, snap }: Frame,
  end: number,
  moving: (from: Spot, to: Spot) => object,
): Record<string, object> {
  const across = (y: number) => moving([end, y], [width - end, y]);
  const off = w / 2 + snap(MOUNT_TO_ARM);
  return {
    ...(carriers[0] === "plate-front" ? { "plate-front": across(mountFront - off) } : {}),
    ...(carriers[1] === "plate-back" ? { "plate-back": across(mountBack + off) } : {}),
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
