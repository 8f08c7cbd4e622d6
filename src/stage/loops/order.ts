import {
  isFlaw,
  type LoopNode,
  type LoopSpan,
  runsInto,
  spanBetween,
  traceLoop,
  wrapOf,
} from "../../mechanics/loop-trace.ts";
import { cross, distance } from "../../mechanics/point.ts";

/**
 * Looks after which a search is given up. A loop of up to ten nodes does not need as many; one of twelve does only when
 * most of them stand in a heap that no belt can thread.
 */
const MOST_LOOKS = 100_000;
/** What two lengths differ by at least to be different, mm. */
const SAME = 1e-9;

export interface FoundOrder<Node> {
  /** The shortest sound order, counter-clockwise; undefined when there is none. */
  readonly nodes: readonly Node[] | undefined;
  /** Whether every order was looked at, or shown to be longer. */
  readonly whole: boolean;
}

/** Returns the order as listed, or against it, whichever is sound counter-clockwise; undefined when neither is. */
export function listedOrder<Node extends LoopNode>(nodes: readonly Node[]): readonly Node[] | undefined {
  return [nodes, [...nodes].reverse()].find((order) => !isFlaw(traceLoop(order)));
}

/**
 * Returns the order in which the shortest sound belt meets 2 to 12 nodes on their sides, counter-clockwise.
 *
 * A taut belt stays within the convex hull of its inside nodes and touches every one that shapes the hull, in the order
 * of the hull. So these are set, and the others are tried between them, nearest first; a way is left as soon as a span
 * runs through a node or crosses another one, or cannot get shorter than the best. The same nodes give the same order,
 * however they are listed and named. Source: plane geometry.
 */
export function shortestOrder<Node extends LoopNode>(nodes: readonly Node[]): FoundOrder<Node> {
  if (nodes.length < 2 || nodes.length > 12 || overlapping(nodes)) return { nodes: undefined, whole: true };
  const sorted = [...nodes].sort((a, b) => a.x - b.x || a.y - b.y);
  const search = searchOf(sorted);
  const allInside = nodes.every(({ inside }) => inside);
  if (allInside && search.hull.size > 0 && search.hull.size < nodes.length) return { nodes: undefined, whole: true };
  extend(search, [search.first], 0);
  return { nodes: search.best?.map((index) => sorted[index] as Node), whole: search.looks < MOST_LOOKS };
}

function overlapping(nodes: readonly LoopNode[]): boolean {
  return nodes.some((node, at) =>
    nodes.slice(at + 1).some((other) => distance(node, other) <= node.radius + other.radius),
  );
}

interface Search {
  readonly nodes: readonly LoopNode[];
  /** The node that the way starts from, one that shapes the hull. */
  readonly first: number;
  /** What follows each node on the hull. */
  readonly hull: ReadonlyMap<number, number>;
  /** Span from each node to each other one; undefined where it runs through a third. */
  readonly spans: readonly (readonly (LoopSpan | undefined)[])[];
  /** The shortest span that lands on each node. */
  readonly nearest: readonly number[];
  best: readonly number[] | undefined;
  length: number;
  looks: number;
}

function searchOf(nodes: readonly LoopNode[]): Search {
  const spans = nodes.map((from, at) => nodes.map((to, other) => (at === other ? undefined : spanBetween(from, to))));
  const free = spans.map((row, at) =>
    row.map((span, to) => {
      const blocked = nodes.some((node, third) => third !== at && third !== to && span && runsInto(span, node));
      return blocked ? undefined : span;
    }),
  );
  const hull = hullOf(nodes, free);
  const nearest = nodes.map((_, to) => Math.min(...free.map((row) => row[to]?.length ?? Number.POSITIVE_INFINITY)));
  const first = hull.keys().next().value ?? 0;
  return { nodes, first, hull, spans: free, nearest, best: undefined, length: Number.POSITIVE_INFINITY, looks: 0 };
}

/** What follows each node on the hull of the inside nodes; nothing where the hull meets a node twice. */
function hullOf(nodes: readonly LoopNode[], spans: Search["spans"]): ReadonlyMap<number, number> {
  const next = new Map<number, number>();
  for (const [from, node] of nodes.entries()) {
    if (!node.inside) continue;
    const onHull = nodes
      .map((to, index) => ({ to, index, span: spans[from]?.[index] }))
      .filter(
        ({ to, span }) => to.inside && span !== undefined && nodes.every((one) => !one.inside || within(one, span)),
      )
      .sort((a, b) => distance(node, a.to) - distance(node, b.to));
    const nearest = onHull[0];
    if (nearest !== undefined) next.set(from, nearest.index);
  }
  return isCycle(next) ? next : new Map();
}

/** Whether a pitch circle lies to the left of a span, or touches its line. */
function within(node: LoopNode, { from, to, length }: LoopSpan): boolean {
  const left = ((to.x - from.x) * (node.y - from.y) - (to.y - from.y) * (node.x - from.x)) / length;
  return left - node.radius >= -SAME * (1 + length);
}

function isCycle(next: ReadonlyMap<number, number>): boolean {
  const [first] = next.keys();
  let met = 0;
  for (let at = first; at !== undefined && met <= next.size; met++) {
    at = next.get(at);
    if (at === first) return met + 1 === next.size;
  }
  return false;
}

/** Goes on from a way that has begun, in every way that may become the shortest. */
function extend(search: Search, way: readonly number[], length: number): void {
  if (search.looks++ >= MOST_LOOKS) return;
  const { nodes, spans, nearest, hull } = search;
  if (way.length === nodes.length) finish(search, way);
  const left = nodes.map((_, index) => index).filter((index) => !way.includes(index));
  const last = way.at(-1) as number;
  const rest = [search.first, ...left].reduce((sum, index) => sum + (nearest[index] as number), 0);
  if (length + rest >= search.length) return;
  const lastOnHull = way.findLast((index) => hull.has(index));
  const due = lastOnHull === undefined ? undefined : hull.get(lastOnHull);
  const ways = left
    .filter((index) => !hull.has(index) || index === due)
    .flatMap((index) => {
      const span = spans[last]?.[index];
      return span === undefined || crosses(search, way, span) ? [] : [{ index, span }];
    })
    .sort((a, b) => a.span.length - b.span.length);
  for (const { index, span } of ways) extend(search, [...way, index], length + span.length + arc(search, way, span));
}

/** Length of the arc that a new span adds on the node that it leaves, mm; none on the first node yet. */
function arc({ nodes, spans }: Search, way: readonly number[], after: LoopSpan): number {
  const [before, at] = way.slice(-2);
  if (before === undefined || at === undefined) return 0;
  const node = nodes[at] as LoopNode;
  return node.radius * wrapOf(node, spans[before]?.[at] as LoopSpan, after);
}

/** Whether a span crosses one of the way before it, but for the one that it follows. */
function crosses({ spans }: Search, way: readonly number[], span: LoopSpan): boolean {
  for (let index = 0; index + 2 < way.length; index++) {
    if (cross(spans[way[index] as number]?.[way[index + 1] as number] as LoopSpan, span)) return true;
  }
  return false;
}

function finish(search: Search, way: readonly number[]): void {
  const loop = traceLoop(way.map((index) => search.nodes[index] as LoopNode));
  if (isFlaw(loop) || loop.length >= search.length - SAME) return;
  search.best = way;
  search.length = loop.length;
}
