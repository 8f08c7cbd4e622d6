import type { Citation } from "../core/bibliography.ts";
import { isRefusal } from "../core/calculation.ts";
import { beltLoop, type LoopNode, slideForLength, summedPull } from "../mechanics/index.ts";

type Inputs = Readonly<Record<string, number>>;

/** What works out a number of the machine that no single formula gives. */
export interface Search {
  readonly name: string;
  readonly title: string;
  readonly takes: string;
  readonly gives: string;
  /** How it goes, in words and formulas. */
  readonly how: string;
  readonly source: Citation;
  /** Where it holds, and what happens outside. */
  readonly valid: string;
  /** Works a result out again from the inputs of a fact; undefined where it refuses or has no such result. */
  readonly again: (inputs: Inputs, result: string) => number | undefined;
}

/** The searches that facts of the machine come from, by the name that the fact has. */
export const SEARCHES = {
  "belt-loop": {
    name: "belt-loop",
    title: "Exact length, spans and wraps of a belt on 2 to 12 pulleys and idlers",
    takes: "the nodes in the order the belt meets them, counter-clockwise: place in mm, pitch radius in mm, side",
    gives: "length in mm, spans with their tangent points, wraps in deg",
    how:
      "for each pair of nodes delta = sigma_i r_i - sigma_j r_j, span = sqrt(D^2 - delta^2), direction = " +
      "atan2(d_y, d_x) + asin(delta / D); wraps from direction to direction; L = sum of spans + sum of r w; sigma is 1 " +
      "inside the loop, -1 outside",
    source: "geometry",
    valid:
      "taut belt, each node visited once, at least two inside; pitch circles that overlap, a node that the belt does not " +
      "touch, an order that it cannot meet, spans that cross or run through a node are refused by name",
    again: beltAgain,
  },
  "slide-for-length": {
    name: "slide-for-length",
    title: "Where a pulley must slide for a belt length",
    takes: "the nodes, the slide of one of them (direction in deg, ends in mm), the length in mm",
    gives: "the place on the slide in mm, and how much a millimetre of slide changes the belt",
    how:
      "Newton's search for the exact length, its slope from the directions of the two spans, on the stretches of the " +
      "slide where the loop is sound; nearest mid-slide wins",
    source: "geometry",
    valid: "a slide that changes the belt by at least 0.2 mm per mm; others, and lengths out of reach, are refused",
    again: slideAgain,
  },
  "summed-pull": {
    name: "summed-pull",
    title: "Pull of several spans on one shaft",
    takes: "direction in deg and tension in N of each span",
    gives: "pull in N and its direction in deg",
    how: "the spans add as arrows",
    source: "statics",
    valid: "what is not a number is refused",
    again: pullAgain,
  },
} as const satisfies Readonly<Record<string, Search>>;

/** Returns a search by its name; undefined where there is none. */
export function searchOf(name: string | undefined): Search | undefined {
  return Object.values<Search>(SEARCHES).find((one) => one.name === name);
}

/** Returns place, radius and side of each node of a belt in turn, as the inputs of a fact. mm; inside 1, outside -1. */
export function beltInputs(nodes: readonly LoopNode[]): Inputs {
  return Object.fromEntries(
    nodes.flatMap(({ name, x, y, radius, inside }) => [
      [`x_${name}`, x],
      [`y_${name}`, y],
      [`r_${name}`, radius],
      [`sigma_${name}`, inside ? 1 : -1],
    ]),
  );
}

/** Inputs keep their order, so the nodes come out as the belt meets them. */
function nodesOf(inputs: Inputs): LoopNode[] {
  const names = Object.keys(inputs).flatMap((key) => (key.startsWith("sigma_") ? [key.slice("sigma_".length)] : []));
  const of = (letter: string, name: string) => inputs[`${letter}_${name}`] ?? Number.NaN;
  return names.map((name) => ({
    name,
    x: of("x", name),
    y: of("y", name),
    radius: of("r", name),
    inside: of("sigma", name) > 0,
  }));
}

function beltAgain(inputs: Inputs, result: string): number | undefined {
  const nodes = nodesOf(inputs);
  const belt = beltLoop(nodes);
  if (isRefusal(belt)) return undefined;
  if (result === "length") return belt.length;
  const node = nodes.findIndex(({ name }) => result === `wrap ${name}`);
  if (node >= 0) return belt.wraps[node];
  const span = nodes.findIndex(({ name }, at) =>
    result.endsWith(` ${name} to ${nodes[(at + 1) % nodes.length]?.name}`),
  );
  return result.startsWith("direction ") ? belt.spans[span]?.direction : belt.spans[span]?.length;
}

function slideAgain(inputs: Inputs, result: string): number | undefined {
  const nodes = nodesOf(inputs);
  const { n_slide: which = 0, direction = Number.NaN, from = Number.NaN, to = Number.NaN, L = Number.NaN } = inputs;
  const slide = { node: nodes[which - 1]?.name ?? "", direction, from, to };
  const found = slideForLength(nodes, slide, L);
  if (isRefusal(found)) return undefined;
  return result === "at" ? found.at : result === "sensitivity" ? found.sensitivity : undefined;
}

function pullAgain(inputs: Inputs, result: string): number | undefined {
  const spans = Object.keys(inputs).flatMap((key) => {
    const [, index] = /^phi_(\d+)$/.exec(key) ?? [];
    return index === undefined
      ? []
      : [{ direction: inputs[key] ?? Number.NaN, tension: inputs[`T_${index}`] ?? Number.NaN }];
  });
  const sum = summedPull(spans);
  if (isRefusal(sum)) return undefined;
  return result === "pull" ? sum.pull : result === "direction" ? sum.direction : undefined;
}
