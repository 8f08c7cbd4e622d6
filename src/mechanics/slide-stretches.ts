import { isFlaw, type LoopNode, traceLoop } from "./loop-trace.ts";

export interface Slide {
  /** Name of the node that moves. */
  readonly node: string;
  /** Direction of the slide, counter-clockwise from +x, deg. */
  readonly direction: number;
  /** Ends of the slide, mm along the direction, measured from where the node stands in the list. */
  readonly from: number;
  readonly to: number;
}

/** A place on the slide where the loop is sound: mm along it, the belt's length, and its change per mm of slide. */
export interface SlidePlace {
  readonly at: number;
  readonly length: number;
  readonly slope: number;
}

/** A stretch of the slide on which the loop is sound and its length only grows or only shrinks. */
export interface Stretch {
  readonly low: SlidePlace;
  readonly high: SlidePlace;
}

/** Pieces in which the slide is searched for a stretch where every node touches. */
const PIECES = 64;
/** Halvings after which the end of a stretch is known to the last bit. */
const HALVINGS = 60;

/** Returns the loop's nodes with one of them moved along the slide. */
export function moved(nodes: readonly LoopNode[], { node, direction }: Slide, at: number): LoopNode[] {
  const angle = (direction * Math.PI) / 180;
  const index = nodes.findIndex(({ name }) => name === node);
  return nodes.map((each, place) =>
    place === index ? { ...each, x: each.x + at * Math.cos(angle), y: each.y + at * Math.sin(angle) } : each,
  );
}

/**
 * Returns what is at a place of the slide; undefined where the loop is not sound.
 *
 * A node that moves pulls at the belt along its two spans, so that the length changes by the difference of their
 * directions along the slide; the wraps give no part of it. Source: plane geometry.
 */
export function placeOn(nodes: readonly LoopNode[], slide: Slide, at: number): SlidePlace | undefined {
  const loop = traceLoop(moved(nodes, slide, at));
  if (isFlaw(loop)) return undefined;
  const index = nodes.findIndex(({ name }) => name === slide.node);
  const [before, after] = [loop.spans[(index || nodes.length) - 1], loop.spans[index]];
  const pull = (direction: number) => Math.cos(((direction - slide.direction) * Math.PI) / 180);
  return { at, length: loop.length, slope: pull(before?.direction ?? 0) - pull(after?.direction ?? 0) };
}

/**
 * Returns the stretches of a slide, from one end to the other. Their ends are found to the last bit: where a node comes
 * to touch, and where the length turns. Source: bisection.
 */
export function stretchesOf(nodes: readonly LoopNode[], slide: Slide): Stretch[] {
  const look = (at: number) => placeOn(nodes, slide, at);
  const stretches: Stretch[] = [];
  let last = look(slide.from);
  let lastAt = slide.from;
  for (let piece = 1; piece <= PIECES; piece++) {
    const at = piece === PIECES ? slide.to : slide.from + ((slide.to - slide.from) * piece) / PIECES;
    const place = look(at);
    const low = last ?? (place === undefined ? undefined : edge(look, place, lastAt));
    const high = place ?? (last === undefined ? undefined : edge(look, last, at));
    if (low !== undefined && high !== undefined && low.at < high.at) append(stretches, monotone(look, low, high));
    [last, lastAt] = [place, at];
  }
  return stretches;
}

/** Adds pieces; one that goes on where the last one ends, in the same sense, makes it longer. */
function append(stretches: Stretch[], pieces: readonly Stretch[]): void {
  for (const piece of pieces) {
    const last = stretches.at(-1);
    if (last?.high === piece.low && senseOf(last) * senseOf(piece) > 0) {
      stretches[stretches.length - 1] = { low: last.low, high: piece.high };
    } else stretches.push(piece);
  }
}

function senseOf({ low, high }: Stretch): number {
  return Math.sign(high.length - low.length);
}

type Look = (at: number) => SlidePlace | undefined;

/** The last sound place on the way from a sound place to one that is not. */
function edge(look: Look, sound: SlidePlace, unsound: number): SlidePlace {
  let [good, bad] = [sound, unsound];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = good.at + (bad - good.at) / 2;
    const place = look(middle);
    if (place === undefined) bad = middle;
    else good = place;
  }
  return good;
}

/** The piece as it is, or in two where its length turns. */
function monotone(look: Look, low: SlidePlace, high: SlidePlace): Stretch[] {
  if (low.slope * high.slope >= 0) return [{ low, high }];
  let [left, right] = [low, high];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const place = look(left.at + (right.at - left.at) / 2);
    if (place === undefined) return [{ low, high }];
    if (place.slope * low.slope > 0) left = place;
    else right = place;
  }
  return [
    { low, high: left },
    { low: left, high },
  ];
}
