import { type Refusal, refuse } from "../core/calculation.ts";
import { type BeltLoop, beltLoop, type LoopNode } from "./belt-loop.ts";
import { brief } from "./bounded.ts";
import type { Point } from "./point.ts";
import {
  type Look,
  lookAlong,
  movedBy,
  type Slide,
  type SlidePlace,
  type Stretch,
  stretchesOf,
} from "./slide-stretches.ts";

export type { Slide } from "./slide-stretches.ts";

export interface SlidePosition {
  /** Place on the slide, mm from where the node stands in the list. */
  readonly at: number;
  readonly node: Point;
  /** Change of belt length per mm of slide. */
  readonly sensitivity: number;
  readonly loop: BeltLoop;
}

/** Below this change of length per mm a slide hardly tightens the belt. */
const LEAST_SENSITIVITY = 0.2;
/** Share of a length, or of a place on the slide, that rounding leaves open. */
const NOISE = 4 * Number.EPSILON;

/** A slide looked at once, for as many lengths as are asked. */
export type LengthOnSlide = (length: number) => SlidePosition | Refusal;

/**
 * Returns where a node must slide for the loop to have a given length.
 *
 * Lengths in mm, angles in deg. The exact length is searched on the stretches of the slide where the loop is sound; of
 * several solutions the one nearest the slide's middle is taken. Refuses a length that no place of the slide gives, and
 * a slide that changes the length by less than 0.2 mm per mm there. Source: plane geometry.
 */
export function slideForLength(nodes: readonly LoopNode[], slide: Slide, length: number): SlidePosition | Refusal {
  return lengthOnSlide(nodes, slide)(length);
}

/** Returns slideForLength for one slide and many lengths: the slide is searched for its stretches only once. */
export function lengthOnSlide(nodes: readonly LoopNode[], slide: Slide): LengthOnSlide {
  const { from, to } = slide;
  if (!nodes.some(({ name }) => name === slide.node)) return () => ({ refused: `the loop has no node ${slide.node}` });
  const noRoom = { refused: "the slide has no room" };
  if (!(from < to && [to - from, slide.direction].every(Number.isFinite))) return () => noRoom;
  const look = lookAlong(nodes, slide);
  const stretches = stretchesOf(look, slide);
  const off = ({ at }: SlidePlace) => Math.abs(at - (from + to) / 2);
  return (length) => {
    if (!Number.isFinite(length)) return noRoom;
    const places = stretches.map((stretch) => placeInStretch(look, stretch, length)).filter((one) => one !== undefined);
    const [place] = places.sort((a, b) => off(a) - off(b));
    return place === undefined ? noPlace(slide, stretches, length) : positionAt(nodes, slide, place);
  };
}

function positionAt(nodes: readonly LoopNode[], slide: Slide, { at, slope }: SlidePlace): SlidePosition | Refusal {
  const index = nodes.findIndex(({ name }) => name === slide.node);
  const placed = nodes.map((each, place) => (place === index ? movedBy(each, slide, at) : each));
  // A place of a stretch is one where the loop is sound, and only a node of the loop has stretches.
  const loop = beltLoop(placed) as BeltLoop;
  const node = placed[index] as LoopNode;
  if (Math.abs(slope) >= LEAST_SENSITIVITY) {
    return { at, node: { x: node.x, y: node.y }, sensitivity: slope, loop };
  }
  return refuse({
    name: "slide-hardly-tightens",
    says: `a millimetre of slide changes the belt by ${brief(Math.abs(slope))} mm only; turn the slide's direction`,
    found: { value: Math.abs(slope), unit: "" },
    limit: { value: LEAST_SENSITIVITY, unit: "" },
    set: "a direction of the slide nearer to the middle between the two spans",
  });
}

/**
 * Returns the place of a stretch where the belt has a length; undefined when there is none.
 *
 * Newton's search from the straight line between the ends, held inside the bracket that it narrows. mm.
 */
export function placeInStretch(look: Look, { low, high }: Stretch, length: number): SlidePlace | undefined {
  const short = (place: SlidePlace) => length - place.length;
  if (short(low) === 0) return low;
  if (short(high) === 0) return high;
  if (!(short(low) * short(high) < 0)) return undefined;
  let [left, right, last] = [low, high, low];
  let next = low.at + ((high.at - low.at) * short(low)) / (high.length - low.length);
  for (;;) {
    const place = look(next);
    if (place === undefined) return undefined;
    if (short(place) * short(low) > 0) left = place;
    else right = place;
    const open = Math.min(Math.abs(short(place)), right.at - left.at);
    if (open <= NOISE * (length + Math.abs(next))) return place;
    const newton = place.at + short(place) / place.slope;
    const quick = newton > left.at && newton < right.at && 2 * Math.abs(short(place)) <= Math.abs(short(last));
    next = quick ? newton : left.at + (right.at - left.at) / 2;
    last = place;
  }
}

function noPlace(slide: Slide, stretches: readonly Stretch[], length: number): Refusal {
  if (stretches.length === 0) {
    const range = `the slide of ${slide.node}, ${brief(slide.from)} to ${brief(slide.to)} mm`;
    return refuse({
      name: "belt-never-touches",
      says: `nowhere on ${range}, does the belt touch every node`,
      set: "a loop that is sound first, then a slide round it",
    });
  }
  const lengths = stretches.flatMap(({ low, high }) => [low.length, high.length]);
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  const short = length > most;
  return refuse({
    name: "length-off-slide",
    says: `the slide makes loops of ${brief(least)} to ${brief(most)} mm, and none of ${brief(length)}`,
    found: { value: length, unit: "mm" },
    limit: { value: short ? most : least, unit: "mm" },
    why: short ? "the belt would hang slack" : "the belt would not go on",
    set: "another stock length, a longer slide, or another place for a screw or idler",
  });
}
