import { isRefusal, type Refusal } from "../core/calculation.ts";
import { type BeltLoop, beltLoop, type LoopNode } from "./belt-loop.ts";
import { bisect } from "./bisect.ts";
import { brief } from "./bounded.ts";
import type { Point } from "./point.ts";

export interface Slide {
  /** Name of the node that moves. */
  readonly node: string;
  /** Direction of the slide, counter-clockwise from +x, deg. */
  readonly direction: number;
  /** Ends of the slide, mm along the direction, measured from where the node stands in the list. */
  readonly from: number;
  readonly to: number;
}

export interface SlidePosition {
  /** Place on the slide, mm from where the node stands in the list. */
  readonly at: number;
  readonly node: Point;
  /** Change of belt length per mm of slide. */
  readonly sensitivity: number;
  readonly loop: BeltLoop;
}

/** Pieces in which the slide is searched for a stretch where every node touches. */
const PIECES = 64;
/** Half the step of the numerical derivative, mm. */
const STEP = 1e-3;
/** Below this change of length per mm a slide hardly tightens the belt. */
const LEAST_SENSITIVITY = 0.2;

/**
 * Returns where a node must slide for the loop to have a given length.
 *
 * Lengths in mm, angles in deg. The exact length is bisected on the stretches of the slide where the loop is sound; of
 * several solutions the one nearest the slide's middle is taken. Refuses a length that no place of the slide gives, and
 * a slide that changes the length by less than 0.2 mm per mm there. Source: plane geometry.
 */
export function slideForLength(nodes: readonly LoopNode[], slide: Slide, length: number): SlidePosition | Refusal {
  const { from, to } = slide;
  if (!nodes.some(({ name }) => name === slide.node)) return { refused: `the loop has no node ${slide.node}` };
  if (!(from < to) || !Number.isFinite(to - from + slide.direction + length)) {
    return { refused: "the slide has no room" };
  }
  const excess = (at: number) => {
    const loop = beltLoop(moved(nodes, slide, at));
    return isRefusal(loop) ? Number.NaN : loop.length - length;
  };
  const places = solutions(excess, from, to);
  const middle = (from + to) / 2;
  const [at] = places.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  if (at === undefined) return { refused: whyNone(excess, from, to, length) };
  const placed = moved(nodes, slide, at);
  // A solution is a place where the loop is sound, and the node was found above.
  const loop = beltLoop(placed) as BeltLoop;
  const node = placed.find(({ name }) => name === slide.node) as LoopNode;
  const sensitivity = slopeOf(excess, at, from, to);
  if (!(Math.abs(sensitivity) >= LEAST_SENSITIVITY)) {
    const small = `a millimetre of slide changes the belt by ${brief(Math.abs(sensitivity))} mm only`;
    return { refused: `${small}; turn the slide's direction` };
  }
  return { at, node: { x: node.x, y: node.y }, sensitivity, loop };
}

function moved(nodes: readonly LoopNode[], { node, direction }: Slide, at: number): LoopNode[] {
  const angle = (direction * Math.PI) / 180;
  return nodes.map((each) =>
    each.name === node ? { ...each, x: each.x + at * Math.cos(angle), y: each.y + at * Math.sin(angle) } : each,
  );
}

function solutions(excess: (at: number) => number, from: number, to: number): number[] {
  const found: number[] = [];
  for (let piece = 0; piece < PIECES; piece++) {
    const left = from + ((to - from) * piece) / PIECES;
    const right = piece === PIECES - 1 ? to : from + ((to - from) * (piece + 1)) / PIECES;
    const at = bisect(excess, left, right);
    if (at !== undefined && Number.isFinite(excess(at))) found.push(at);
  }
  return found;
}

/** The slope at a place; one-sided at an end of the slide or of the stretch where the loop is sound. */
function slopeOf(excess: (at: number) => number, at: number, from: number, to: number): number {
  const right = Math.min(to, at + STEP);
  const left = Math.max(from, at - STEP);
  const pairs: readonly (readonly [number, number])[] = [
    [left, right],
    [left, at],
    [at, right],
  ];
  const slopes = pairs.map(([a, b]) => (excess(b) - excess(a)) / (b - a));
  return slopes.find(Number.isFinite) ?? 0;
}

function whyNone(excess: (at: number) => number, from: number, to: number, length: number): string {
  const places = Array.from({ length: PIECES + 1 }, (_, piece) => from + ((to - from) * piece) / PIECES);
  const lengths = places.map((at) => excess(at) + length).filter(Number.isFinite);
  if (lengths.length === 0) return "nowhere on the slide does the belt touch every node";
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  return `the slide makes loops of ${brief(least)} to ${brief(most)} mm, and none of ${brief(length)}`;
}
