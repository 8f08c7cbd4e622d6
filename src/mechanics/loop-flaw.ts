import { type Refusal, refuse } from "../core/calculation.ts";
import { tidy } from "../core/rounding.ts";
import { brief } from "./bounded.ts";
import { encloses } from "./loop-inside.ts";
import { isFlaw, type LoopFlaw, type LoopNode, traceLoop } from "./loop-trace.ts";
import { distanceToSegment, type Point } from "./point.ts";

type Explained = (nodes: readonly LoopNode[], flaw: LoopFlaw) => Refusal;

const mm = (value: number) => ({ value, unit: "mm" }) as const;
const deg = (radians: number) => ({ value: tidy((radians * 180) / Math.PI), unit: "deg" }) as const;
const nameOf = (nodes: readonly LoopNode[], index: number) => (nodes[index % nodes.length] as LoopNode).name;
const listed = (nodes: readonly LoopNode[]) => nodes.map(({ name }) => name).join(", ");

/** Returns a flaw of a loop as a refusal with its name, its numbers and what to set. */
export function flawRefusal(nodes: readonly LoopNode[], flaw: LoopFlaw): Refusal {
  return EXPLAINED[flaw.flaw](nodes, flaw);
}

const EXPLAINED: Readonly<Record<LoopFlaw["flaw"], Explained>> = {
  count: (_, { found, limit }) =>
    refuse({
      name: "loop-node-count",
      says: `a loop has 2 to 12 nodes, and this one has ${found}`,
      found: { value: found, unit: "" },
      limit: { value: limit, unit: "" },
      set: "2 to 12 nodes, at least two of them inside",
    }),
  vague: (nodes, { at }) =>
    refuse({
      name: "loop-measure-missing",
      says: `a measure of ${nameOf(nodes, at)} is not a number`,
      set: `x, y and radius of ${nameOf(nodes, at)} as numbers, mm`,
    }),
  flat: (nodes, { at, found }) =>
    refuse({
      name: "node-without-radius",
      says: `the radius of ${nameOf(nodes, at)} must be above 0 mm`,
      found: mm(found),
      limit: mm(0),
      set: `the pitch radius of ${nameOf(nodes, at)}, or that of a smooth idler`,
    }),
  outside: (_, { found, limit }) =>
    refuse({
      name: "too-few-inside-nodes",
      says: `at least two nodes must stand inside the loop, and ${found === 1 ? "one does" : "none does"}`,
      found: { value: found, unit: "" },
      limit: { value: limit, unit: "" },
      set: "inside for the pulleys whose toothed side the belt lies on",
    }),
  overlap: (nodes, { at, other, found, limit }) => {
    const pair = `${nameOf(nodes, at)} and ${nameOf(nodes, other)}`;
    const short = `${pair} are ${brief(found)} mm apart, too near: their pitch circles need over ${brief(limit)} mm`;
    return refuse({
      name: "nodes-overlap",
      says: found === 0 ? `${pair} stand at one place` : short,
      found: mm(found),
      limit: mm(limit),
      set: `${pair} at least ${brief(limit - found)} mm further apart, or smaller`,
    });
  },
  loose,
  crossing: (nodes, { at, other, place }) => {
    const better = workingOrder(nodes);
    const second = `that after ${nameOf(nodes, other)}${where(place as Point)}`;
    return refuse({
      name: "spans-cross",
      says: `the span after ${nameOf(nodes, at)} crosses another span, ${second}`,
      set: better === undefined ? "another place or side for one of the nodes" : `the order ${listed(better)}`,
    });
  },
  through: (nodes, { at, other, found, limit }) => {
    const span = `the span from ${nameOf(nodes, at)} to ${nameOf(nodes, at + 1)}`;
    const near = `${brief(found)} mm from its middle, under ${brief(limit)} mm`;
    return refuse({
      name: "span-through-node",
      says: `${span} runs through ${nameOf(nodes, other)}: ${near}`,
      found: mm(found),
      limit: mm(limit),
      set: `${nameOf(nodes, other)} at least ${brief(limit - found)} mm further from that span`,
    });
  },
  large: (_, { limit }) =>
    refuse({
      name: "loop-too-large",
      says: "the loop is too large to hold",
      limit: mm(limit),
      set: "places of ordinary size, in mm",
    }),
};

/** Where two spans cross, which the trace of a crossing always tells. */
function where({ x, y }: Point): string {
  return `, at x ${brief(x)}, y ${brief(y)} mm`;
}

/** A node whose wrap cannot be: the order is wrong, or the belt passes the node by. */
function loose(nodes: readonly LoopNode[], { at, found, limit }: LoopFlaw): Refusal {
  const better = workingOrder(nodes);
  if (better !== undefined) return wrongOrder(nodes, limit, `the order ${listed(better)}`);
  const { kept, missed } = withoutLoose(nodes, at);
  const loop = traceLoop(kept);
  if (isFlaw(loop)) {
    return wrongOrder(nodes, limit, "the nodes as a finger meets them that runs along the belt, counter-clockwise");
  }
  const gap = Math.min(...loop.spans.map((span) => distanceToSegment(missed, span))) - missed.radius;
  if (gap <= 0) return wrongOrder(nodes, limit, `another place or side for ${missed.name}, or leave it out`);
  const turn = missed === nodes[at] ? ` (it would have to lie on it over ${brief(deg(found).value)} deg)` : "";
  return refuse({
    name: "belt-misses-node",
    says: `the belt does not touch ${missed.name}, but passes ${brief(gap)} mm beside it${turn}`,
    found: mm(gap),
    limit: mm(0),
    set: `${missed.name} at least ${brief(gap)} mm further into the belt, or leave it out`,
  });
}

function wrongOrder(nodes: readonly LoopNode[], turned: number, set: string): Refusal {
  const once = Math.abs(turned - 2 * Math.PI) < 1e-6;
  const round = once ? "it would cross itself" : `it would turn by ${brief(deg(turned).value)} deg instead of 360`;
  return refuse({
    name: "node-order-wrong",
    says: `no taut belt meets ${listed(nodes)} in this order, counter-clockwise: ${round}`,
    ...(once ? {} : { found: deg(turned), limit: deg(2 * Math.PI) }),
    set,
  });
}

/** An order of the same nodes that makes a sound loop: reversed, round their middle, or with one of them moved. */
function workingOrder(nodes: readonly LoopNode[]): readonly LoopNode[] | undefined {
  const orders = [[...nodes].reverse(), roundMiddle(nodes), ...nodes.flatMap((node) => withMoved(nodes, node))];
  return orders.find((order) => !isFlaw(traceLoop(order)));
}

function roundMiddle(nodes: readonly LoopNode[]): LoopNode[] {
  const x = nodes.reduce((sum, node) => sum + node.x, 0) / nodes.length;
  const y = nodes.reduce((sum, node) => sum + node.y, 0) / nodes.length;
  return [...nodes].sort((a, b) => Math.atan2(a.y - y, a.x - x) - Math.atan2(b.y - y, b.x - x));
}

function withMoved(nodes: readonly LoopNode[], node: LoopNode): LoopNode[][] {
  const others = nodes.filter((other) => other !== node);
  return others.map((_, place) => [...others.slice(0, place + 1), node, ...others.slice(place + 1)]);
}

/** Leaves out nodes, the loosest first, until a sound loop is left or there is nothing to leave out. */
function withoutLoose(nodes: readonly LoopNode[], at: number): { kept: readonly LoopNode[]; missed: LoopNode } {
  for (const missed of nodes) {
    const kept = nodes.filter((other) => other !== missed);
    const loop = traceLoop(kept);
    if (!isFlaw(loop) && encloses(loop, missed) === missed.inside) return { kept, missed };
  }
  const missed = nodes[at] as LoopNode;
  let kept = nodes;
  for (let loosest = at; kept.length > 2; ) {
    const gone = kept[loosest];
    kept = kept.filter((node) => node !== gone);
    const outcome = traceLoop(kept);
    if (!isFlaw(outcome) || outcome.flaw !== "loose") break;
    loosest = outcome.at;
  }
  return { kept, missed };
}
