import { cross, crossingPlace, distance, distanceToSegment, type Point, type Segment } from "./point.ts";

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

/** What keeps a belt from running round the nodes: `at` and `other` are places in the list. */
export interface LoopFlaw {
  readonly flaw: "count" | "vague" | "flat" | "outside" | "overlap" | "loose" | "crossing" | "through" | "large";
  /** The node, or the node from which the span starts. */
  readonly at: number;
  readonly other: number;
  readonly found: number;
  readonly limit: number;
  /** Where two spans cross. */
  readonly place?: Point;
}

const TURN = 2 * Math.PI;
const DEGREES = 180 / Math.PI;
/** Angle, rad, and share of a length below which a touch is no more than touching. */
const GUARD = 1e-9;

export function isFlaw(outcome: BeltLoop | LoopFlaw): outcome is LoopFlaw {
  return "flaw" in outcome;
}

/**
 * Returns the taut belt round the nodes in their order, or the first flaw met, without words: the quick way for
 * searches. The belt is sound when it is one counter-clockwise turn that neither crosses itself nor runs through a
 * node.
 *
 * Units: mm and deg. Source: plane geometry.
 */
export function traceLoop(nodes: readonly LoopNode[]): BeltLoop | LoopFlaw {
  const wrong = misplaced(nodes);
  if (wrong !== undefined) return wrong;
  const spans = nodes.map((node, index) => spanBetween(node, following(nodes, index)));
  const wraps = nodes.map((node, index) => wrapOf(node, spans.at(index - 1) as LoopSpan, spans[index] as LoopSpan));
  const tangled = untouched(nodes, wraps) ?? crossing(nodes, spans, wraps) ?? through(nodes, spans);
  if (tangled !== undefined) return tangled;
  let length = 0;
  for (let index = 0; index < nodes.length; index++) {
    length += (spans[index] as LoopSpan).length + (nodes[index] as LoopNode).radius * (wraps[index] as number);
  }
  if (!Number.isFinite(length)) return flaw("large", 0, 0, length, Number.MAX_VALUE);
  return { length, spans, wraps: wraps.map((wrap) => wrap * DEGREES) };
}

function flaw(kind: LoopFlaw["flaw"], at: number, other: number, found: number, limit: number): LoopFlaw {
  return { flaw: kind, at, other, found, limit };
}

function misplaced(nodes: readonly LoopNode[]): LoopFlaw | undefined {
  if (nodes.length < 2 || nodes.length > 12) return flaw("count", 0, 0, nodes.length, nodes.length < 2 ? 2 : 12);
  const vague = nodes.findIndex(({ x, y, radius }) => ![x, y, radius].every(Number.isFinite));
  if (vague >= 0) return flaw("vague", vague, vague, 0, 0);
  const flat = nodes.findIndex(({ radius }) => radius <= 0);
  if (flat >= 0) return flaw("flat", flat, flat, (nodes[flat] as LoopNode).radius, 0);
  const inside = nodes.filter((node) => node.inside).length;
  if (inside < 2) return flaw("outside", 0, 0, inside, 2);
  for (let at = 0; at < nodes.length; at++) {
    for (let other = at + 1; other < nodes.length; other++) {
      const [first, second] = [nodes[at] as LoopNode, nodes[other] as LoopNode];
      const needed = first.radius + second.radius;
      const apart = distance(first, second);
      if (!Number.isFinite(apart + needed)) return flaw("large", at, other, apart, Number.MAX_VALUE);
      if (apart <= needed) return flaw("overlap", at, other, apart, needed);
    }
  }
  return undefined;
}

function following(nodes: readonly LoopNode[], index: number): LoopNode {
  return nodes[(index + 1) % nodes.length] as LoopNode;
}

function signOf(node: LoopNode): number {
  return node.inside ? 1 : -1;
}

/** Returns the span that leaves one node and lands on the next, on the side of each that the belt lies on; mm, deg. */
export function spanBetween(from: LoopNode, to: LoopNode): LoopSpan {
  const [outFrom, outTo] = [signOf(from) * from.radius, signOf(to) * to.radius];
  const apart = distance(from, to);
  const shift = outFrom - outTo;
  const length = Math.sqrt((apart - shift) * (apart + shift));
  const [ahead, aside] = [length / apart, shift / apart];
  const [dx, dy] = [(to.x - from.x) / apart, (to.y - from.y) / apart];
  const cosine = dx * ahead - dy * aside;
  const sine = dy * ahead + dx * aside;
  return {
    from: { x: from.x + outFrom * sine, y: from.y - outFrom * cosine },
    to: { x: to.x + outTo * sine, y: to.y - outTo * cosine },
    length,
    direction: Math.atan2(sine, cosine) * DEGREES,
  };
}

/** Returns the angle over which the belt lies on a node, rad; rounding takes nothing from a wrap of nothing. */
export function wrapOf(node: LoopNode, before: LoopSpan, after: LoopSpan): number {
  const turn = (signOf(node) * (after.direction - before.direction)) / DEGREES;
  const wrap = turn - TURN * Math.floor(turn / TURN);
  return wrap > TURN - GUARD ? 0 : wrap;
}

/** A loop that is not one turn: some wrap that should be a little below zero came out as nearly a whole turn. */
function untouched(nodes: readonly LoopNode[], wraps: readonly number[]): LoopFlaw | undefined {
  let turned = 0;
  let most = 0;
  for (let index = 0; index < nodes.length; index++) {
    const wrap = wraps[index] as number;
    turned += signOf(nodes[index] as LoopNode) * wrap;
    if (wrap > (wraps[most] as number)) most = index;
  }
  if (Math.abs(turned - TURN) <= GUARD) return undefined;
  if (!Number.isFinite(turned)) return flaw("large", most, most, turned, Number.MAX_VALUE);
  return flaw("loose", most, most, wraps[most] as number, turned);
}

/**
 * Spans that cross. A loop that only turns left, once, is convex and cannot. Neighbours cross only where the belt turns
 * by more than half round their node, which it then misses.
 */
function crossing(
  nodes: readonly LoopNode[],
  spans: readonly LoopSpan[],
  wraps: readonly number[],
): LoopFlaw | undefined {
  if (nodes.every(({ inside }) => inside)) return undefined;
  const last = spans.length - 1;
  for (let at = 0; at < last; at++) {
    for (let other = at + 2; other <= last; other++) {
      const [first, second] = [spans[at] as LoopSpan, spans[other] as LoopSpan];
      if ((at === 0 && other === last) || !cross(first, second)) continue;
      return { ...flaw("crossing", at, other, 0, 0), place: crossingPlace(first, second) };
    }
  }
  for (let at = 0; at <= last; at++) {
    const wrap = wraps[at] as number;
    const before = spans[at === 0 ? last : at - 1] as LoopSpan;
    if (wrap > Math.PI && cross(before, spans[at] as LoopSpan)) return flaw("loose", at, at, wrap, TURN);
  }
  return undefined;
}

/** A span that runs through a node which is not at its ends. */
function through(nodes: readonly LoopNode[], spans: readonly LoopSpan[]): LoopFlaw | undefined {
  for (let at = 0; at < spans.length; at++) {
    const span = spans[at] as LoopSpan;
    const next = at + 1 === nodes.length ? 0 : at + 1;
    for (let other = 0; other < nodes.length; other++) {
      const node = nodes[other] as LoopNode;
      if (other === at || other === next || !runsInto(span, node)) continue;
      return flaw("through", at, other, distanceToSegment(node, span), node.radius);
    }
  }
  return undefined;
}

/** Returns whether a span runs through the pitch circle of a node, by more than touching it. */
export function runsInto(span: LoopSpan, node: LoopNode): boolean {
  if (beside(node, span)) return false;
  return distanceToSegment(node, span) < node.radius - GUARD * (node.radius + span.length);
}

/** Whether a node is clear of the box round a span, which is quick to tell. */
function beside({ x, y, radius }: LoopNode, { from, to }: LoopSpan): boolean {
  if (x + radius < from.x && x + radius < to.x) return true;
  if (x - radius > from.x && x - radius > to.x) return true;
  if (y + radius < from.y && y + radius < to.y) return true;
  return y - radius > from.y && y - radius > to.y;
}
