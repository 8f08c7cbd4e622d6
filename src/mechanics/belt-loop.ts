import type { Refusal } from "../core/calculation.ts";
import { brief } from "./bounded.ts";
import { cross, distance, type Point, type Segment } from "./point.ts";

/** A pulley or idler as the belt meets it. Toothed: pitch radius; smooth: smoothIdlerRadius. */
export interface LoopNode extends Point {
  readonly name: string;
  /** Radius of the belt's pitch line, mm. */
  readonly radius: number;
  /** Whether the node stands inside the loop; an outside one bends the belt backwards. */
  readonly inside: boolean;
}

export interface LoopSpan extends Segment {
  readonly length: number;
  /** Direction of travel, counter-clockwise from +x, deg. */
  readonly direction: number;
}

export interface BeltLoop {
  /** Length along the pitch line, mm. */
  readonly length: number;
  /** Span `i` runs from node `i` to the next. */
  readonly spans: readonly LoopSpan[];
  /** Angle over which the belt lies on each node, deg. */
  readonly wraps: readonly number[];
}

const TURN = 2 * Math.PI;

/**
 * Returns the exact pitch-line length, spans and wraps of a closed belt.
 *
 * `nodes` are 2 to 12, in the order in which the belt meets them, counter-clockwise; at least two stand inside, and
 * each is met once. Units: mm and deg. Refuses nodes without a common tangent, a node the belt does not touch, spans
 * that cross, and any loop whose signed wraps are not one turn. Source: plane geometry.
 */
export function beltLoop(nodes: readonly LoopNode[]): BeltLoop | Refusal {
  const wrong = misplaced(nodes);
  if (wrong !== undefined) return { refused: wrong };
  const spans: LoopSpan[] = [];
  for (const [index, node] of nodes.entries()) {
    const span = tangent(node, following(nodes, index));
    if ("refused" in span) return span;
    spans.push(span);
  }
  const wraps = nodes.map((node, index) => wrapOf(node, spans.at(index - 1) as LoopSpan, spans[index] as LoopSpan));
  const loose = untouched(nodes, wraps);
  if (loose !== undefined) {
    return { refused: `the belt does not touch ${loose.name}, or the order is wrong: it is counter-clockwise` };
  }
  const crossing = spans.findIndex((span, index) => spans.some((other, at) => at > index && cross(span, other)));
  if (crossing >= 0) return { refused: `the span after ${nodes[crossing]?.name} crosses another span` };
  const straight = spans.reduce((sum, span) => sum + span.length, 0);
  const length = nodes.reduce((sum, node, index) => sum + node.radius * (wraps[index] as number), straight);
  if (!Number.isFinite(length)) return { refused: "the loop is too large to hold" };
  return { length, spans, wraps: wraps.map((wrap) => (wrap * 180) / Math.PI) };
}

/**
 * The node whose wrap cannot be. A wrap that should be just below zero comes out just below a full turn, and the sum of
 * the signed wraps is then more than one turn, unless an outside node hides it by the same fault.
 */
function untouched(nodes: readonly LoopNode[], wraps: readonly number[]): LoopNode | undefined {
  const wrap = (node: LoopNode) => wraps[nodes.indexOf(node)] as number;
  const hidden = nodes.some(({ inside }) => !inside);
  const over = nodes.find((node) => hidden && wrap(node) > (node.inside ? 0.75 : 0.5) * TURN);
  if (over !== undefined) return over;
  const turned = nodes.reduce((sum, node) => sum + signOf(node) * wrap(node), 0);
  if (Math.abs(turned - TURN) <= 1e-9) return undefined;
  return nodes.reduce((most, node) => (wrap(node) > wrap(most) ? node : most));
}

function misplaced(nodes: readonly LoopNode[]): string | undefined {
  if (nodes.length < 2 || nodes.length > 12) return `a loop has 2 to 12 nodes, and this one has ${nodes.length}`;
  const vague = nodes.find(({ x, y, radius }) => !Number.isFinite(x + y + radius));
  if (vague !== undefined) return `a measure of ${vague.name} is not a number`;
  const flat = nodes.find(({ radius }) => radius <= 0);
  if (flat !== undefined) return `the radius of ${flat.name} must be above 0 mm`;
  if (nodes.filter(({ inside }) => inside).length < 2) return "at least two nodes must stand inside the loop";
  for (const [index, node] of nodes.entries()) {
    const twin = nodes.slice(index + 1).find((other) => distance(node, other) === 0);
    if (twin !== undefined) return `${node.name} and ${twin.name} stand at one place`;
  }
  return undefined;
}

function following(nodes: readonly LoopNode[], index: number): LoopNode {
  return nodes[(index + 1) % nodes.length] as LoopNode;
}

function signOf(node: LoopNode): number {
  return node.inside ? 1 : -1;
}

function tangent(from: LoopNode, to: LoopNode): LoopSpan | Refusal {
  const apart = distance(from, to);
  const shift = signOf(from) * from.radius - signOf(to) * to.radius;
  if (Math.abs(shift) >= apart) {
    const short = `${from.name} and ${to.name} are ${brief(apart)} mm apart`;
    return { refused: `${short}, too near for a belt between them: over ${brief(Math.abs(shift))} mm is needed` };
  }
  const direction = Math.atan2(to.y - from.y, to.x - from.x) + Math.asin(shift / apart);
  return {
    from: touch(from, direction),
    to: touch(to, direction),
    length: Math.sqrt((apart - shift) * (apart + shift)),
    direction: (direction * 180) / Math.PI,
  };
}

function touch(node: LoopNode, direction: number): Point {
  const out = signOf(node) * node.radius;
  return { x: node.x + out * Math.sin(direction), y: node.y - out * Math.cos(direction) };
}

function wrapOf(node: LoopNode, before: LoopSpan, after: LoopSpan): number {
  const turn = (signOf(node) * ((after.direction - before.direction) * Math.PI)) / 180;
  return turn - TURN * Math.floor(turn / TURN);
}
