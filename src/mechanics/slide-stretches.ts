import { isFlaw, type LoopNode, type LoopSpan, traceLoop } from "./loop-trace.ts";

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
const PIECES = 32;
/** Halvings after which the end of a stretch is known to the last bit. */
const HALVINGS = 60;

/** Returns what is at a place of a slide; undefined where the loop is not sound. */
export type Look = (at: number) => SlidePlace | undefined;

/** Returns a node moved along a slide. */
export function movedBy<Node extends LoopNode>(node: Node, { direction }: Slide, at: number): Node {
  const angle = (direction * Math.PI) / 180;
  return { ...node, x: node.x + at * Math.cos(angle), y: node.y + at * Math.sin(angle) };
}

/**
 * Returns how to look at places of a slide; its node is one of the nodes.
 *
 * A node that moves pulls at the belt along its two spans, so that the length changes by the difference of their
 * directions along the slide; the wraps give no part of it. Source: plane geometry.
 */
export function lookAlong(nodes: readonly LoopNode[], slide: Slide): Look {
  const index = nodes.findIndex(({ name }) => name === slide.node);
  const node = nodes[index] as LoopNode;
  const placed = [...nodes];
  const pull = (direction: number) => Math.cos(((direction - slide.direction) * Math.PI) / 180);
  return (at) => {
    placed[index] = movedBy(node, slide, at);
    const loop = traceLoop(placed);
    if (isFlaw(loop)) return undefined;
    const [before, after] = [loop.spans.at(index - 1) as LoopSpan, loop.spans[index] as LoopSpan];
    return { at, length: loop.length, slope: pull(before.direction) - pull(after.direction) };
  };
}

/**
 * Returns the stretches of a slide, from one end to the other. Their ends are found to the last bit: where a node comes
 * to touch, and where the length turns. Source: bisection.
 */
export function stretchesOf(look: Look, slide: Slide): Stretch[] {
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
