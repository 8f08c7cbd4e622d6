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
/** Angle, rad, and share of a length below which a touch is no more than touching. */
const GUARD = 1e-9;

export function isFlaw(outcome: BeltLoop | LoopFlaw): outcome is LoopFlaw {
  return "flaw" in outcome;
}

/**
 * Returns the taut belt round the nodes in their order, or the first flaw met, without words: the quick way for
 * searches. The belt is sound when it is one counter-clockwise turn that neither crosses itself nor runs through a node.
 *
 * Units: mm and deg. Source: plane geometry.
 */
export function traceLoop(nodes: readonly LoopNode[]): BeltLoop | LoopFlaw {
  const wrong = misplaced(nodes);
  if (wrong !== undefined) return wrong;
  const directions = nodes.map((node, index) => directionOf(node, following(nodes, index)));
  const spans = nodes.map((node, index) => spanOf(node, following(nodes, index), directions[index] ?? 0));
  const wraps = nodes.map((node, index) =>
    wrapOf(node, directions[(index || nodes.length) - 1] ?? 0, directions[index] ?? 0),
  );
  const tangled = untouched(nodes, wraps) ?? crossing(spans, wraps) ?? through(nodes, spans);
  if (tangled !== undefined) return tangled;
  let length = 0;
  for (const [index, node] of nodes.entries())
    length += (spans[index]?.length ?? 0) + node.radius * (wraps[index] ?? 0);
  if (!Number.isFinite(length)) return flaw("large", 0, 0, length, Number.MAX_VALUE);
  return { length, spans, wraps: wraps.map((wrap) => (wrap * 180) / Math.PI) };
}

function flaw(kind: LoopFlaw["flaw"], at: number, other: number, found: number, limit: number): LoopFlaw {
  return { flaw: kind, at, other, found, limit };
}

function misplaced(nodes: readonly LoopNode[]): LoopFlaw | undefined {
  if (nodes.length < 2 || nodes.length > 12) return flaw("count", 0, 0, nodes.length, nodes.length < 2 ? 2 : 12);
  const vague = nodes.findIndex(({ x, y, radius }) => !Number.isFinite(x + y + radius));
  if (vague >= 0) return flaw("vague", vague, vague, 0, 0);
  const flat = nodes.findIndex(({ radius }) => radius <= 0);
  if (flat >= 0) return flaw("flat", flat, flat, nodes[flat]?.radius ?? 0, 0);
  const inside = nodes.filter((node) => node.inside).length;
  if (inside < 2) return flaw("outside", 0, 0, inside, 2);
  for (const [at, node] of nodes.entries()) {
    for (let other = at + 1; other < nodes.length; other++) {
      const second = nodes[other] as LoopNode;
      const [apart, needed] = [distance(node, second), node.radius + second.radius];
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

/** How far the second node's touching side lies to the left of the first one's, mm. */
function shiftOf(from: LoopNode, to: LoopNode): number {
  return signOf(from) * from.radius - signOf(to) * to.radius;
}

/** Direction of the span that touches both nodes on their sides, rad. */
function directionOf(from: LoopNode, to: LoopNode): number {
  return Math.atan2(to.y - from.y, to.x - from.x) + Math.asin(shiftOf(from, to) / distance(from, to));
}

function spanOf(from: LoopNode, to: LoopNode, direction: number): LoopSpan {
  const [sine, cosine] = [Math.sin(direction), Math.cos(direction)];
  const touch = (node: LoopNode): Point => {
    const out = signOf(node) * node.radius;
    return { x: node.x + out * sine, y: node.y - out * cosine };
  };
  const [apart, shift] = [distance(from, to), shiftOf(from, to)];
  const length = Math.sqrt((apart - shift) * (apart + shift));
  return { from: touch(from), to: touch(to), length, direction: (direction * 180) / Math.PI };
}

/** The angle over which the belt lies on a node, rad; a wrap of nothing stays nothing when rounding makes it less. */
function wrapOf(node: LoopNode, before: number, after: number): number {
  const turn = signOf(node) * (after - before);
  const wrap = turn - TURN * Math.floor(turn / TURN);
  return wrap > TURN - GUARD ? 0 : wrap;
}

/** A loop that is not one turn: some wrap that should be a little below zero came out as nearly a whole turn. */
function untouched(nodes: readonly LoopNode[], wraps: readonly number[]): LoopFlaw | undefined {
  let turned = 0;
  let most = 0;
  for (const [index, wrap] of wraps.entries()) {
    turned += signOf(nodes[index] as LoopNode) * wrap;
    if (wrap > (wraps[most] ?? 0)) most = index;
  }
  if (Math.abs(turned - TURN) <= GUARD) return undefined;
  return flaw("loose", most, most, wraps[most] ?? 0, turned);
}

/** Spans that cross. Neighbours can only where the belt turns by more than half round their node, which it misses. */
function crossing(spans: readonly LoopSpan[], wraps: readonly number[]): LoopFlaw | undefined {
  for (let at = 0; at < spans.length; at++) {
    for (let other = at + 1; other < spans.length; other++) {
      const [first, second] = [spans[at] as LoopSpan, spans[other] as LoopSpan];
      const nodeBetween = other === at + 1 ? other : at === 0 && other === spans.length - 1 ? 0 : undefined;
      const wrap = nodeBetween === undefined ? TURN : (wraps[nodeBetween] ?? 0);
      if (wrap <= Math.PI || !cross(first, second)) continue;
      if (nodeBetween === undefined)
        return { ...flaw("crossing", at, other, 0, 0), place: crossingPlace(first, second) };
      return flaw("loose", nodeBetween, nodeBetween, wrap, TURN);
    }
  }
  return undefined;
}

/** A span that runs through a node which is not at its ends. */
function through(nodes: readonly LoopNode[], spans: readonly LoopSpan[]): LoopFlaw | undefined {
  for (const [at, span] of spans.entries()) {
    for (const [other, node] of nodes.entries()) {
      if (other === at || other === (at + 1) % nodes.length) continue;
      const clear = distanceToSegment(node, span);
      if (clear < node.radius - GUARD * (node.radius + span.length)) {
        return flaw("through", at, other, clear, node.radius);
      }
    }
  }
  return undefined;
}
