import { isRefusal } from "../../core/calculation.ts";
import { tidy } from "../../core/rounding.ts";
import { beltLoop, idlerDuties, lengthOnSlide, type Point, type Slide } from "../../mechanics/index.ts";
import { movedBy } from "../../mechanics/slide-stretches.ts";
import type { BeltNode } from "../machine.ts";
import type { Plan, PlanLoop } from "../schema/index.ts";
import { barOfScrew, directionOf } from "./bars.ts";
import type { SolvedLoop } from "./solve.ts";
import { roomFor, stockOf } from "./stock.ts";

/** How far a foot may be moved along its bar to save a longer slide or an idler, mm. */
const FARTHEST = 5;

/** A screw moved along the bar of its foot, with which a stock loop fits. */
export interface FootMove {
  readonly screw: string;
  readonly bar: string;
  /** mm along the bar, in its direction. */
  readonly by: number;
  readonly outwards: boolean;
  readonly at: readonly [number, number];
  /** The stock loop, mm. */
  readonly length: number;
}

/** Returns the moves of a foot with which a loop fits as it is: in the middle of its slide, or without one. */
export function fittingMoves(plan: Plan, { before, ordered, slide }: SolvedLoop): readonly FootMove[] {
  if (slide === undefined) return footMoves(plan, ordered.plan, before);
  const middle = (slide.from + slide.to) / 2;
  const placed = before.map((node) => (node.name === slide.node ? movedBy(node, slide, middle) : node));
  return footMoves(plan, ordered.plan, placed).filter((move) => hasRoom(ordered.plan, placed, move, slide));
}

function hasRoom(loop: PlanLoop, placed: readonly BeltNode[], { screw, at, length }: FootMove, slide: Slide): boolean {
  const [x, y] = at;
  const nodes = placed.map((node) => (node.name === screw ? { ...node, x, y } : node));
  const half = (slide.to - slide.from) / 2;
  const position = lengthOnSlide(nodes, { ...slide, from: -half, to: half })(length);
  if (isRefusal(position)) return false;
  const room = roomFor(loop, length, { ...slide, from: -half, to: half }, position);
  return !isRefusal(room) && room.hasInward >= room.inward && room.hasOutward >= room.outward;
}

/** Returns the moves with which a loop fits without those of its idlers that make no wrap; none if it has no such. */
export function movesInsteadOfIdlers(plan: Plan, { before, ordered }: SolvedLoop): readonly FootMove[] {
  const duties = idlerDuties(bare(before));
  if (isRefusal(duties)) return [];
  const spare = duties.filter(({ parkable }) => parkable).map(({ name }) => name);
  const left = before.filter(({ name }) => !spare.includes(name));
  const others = idlerDuties(bare(left));
  if (spare.length === 0 || left.length < 2 || isRefusal(others)) return [];
  return footMoves(plan, ordered.plan, left);
}

/** Nodes with idlers counted as smooth: what an idler meshes carries nothing. */
export function bare(nodes: readonly BeltNode[]): readonly BeltNode[] {
  return nodes.map(({ teeth, ...node }) => (node.kind === "idler" || teeth === undefined ? node : { ...node, teeth }));
}

/** The shortest move of each screw of a loop that makes the way round a stock length, shortest first. */
function footMoves(plan: Plan, loop: PlanLoop, nodes: readonly BeltNode[]): readonly FootMove[] {
  const belt = beltLoop(nodes);
  if (isRefusal(belt)) return [];
  // A node that moves changes its two spans by its way at most.
  const lengths = stockOf(loop, belt.length).lengths.filter(
    (length) =>
      Math.abs(length - belt.length) <= 2 * FARTHEST && Number.isInteger(tidy(length / loop.belt.values.pitch)),
  );
  return nodes
    .filter(({ kind }) => kind === "screw")
    .flatMap((screw) => moveOf(plan, nodes, screw, lengths) ?? [])
    .sort((a, b) => Math.abs(a.by) - Math.abs(b.by));
}

const distanceTo = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

function moveOf(
  plan: Plan,
  nodes: readonly BeltNode[],
  screw: BeltNode,
  lengths: readonly number[],
): FootMove | undefined {
  const foot = barOfScrew(plan, screw.name);
  if (foot === undefined) return undefined;
  const along = { node: screw.name, direction: directionOf(foot.bar), from: -FARTHEST, to: FARTHEST };
  const placeFor = lengthOnSlide(nodes, along);
  const others = nodes.filter((node) => node !== screw);
  const middle = {
    x: others.reduce((sum, { x }) => sum + x, 0) / others.length,
    y: others.reduce((sum, { y }) => sum + y, 0) / others.length,
  };
  const moves = lengths.flatMap((length): FootMove[] => {
    const position = placeFor(length);
    if (isRefusal(position)) return [];
    const { x, y } = position.node;
    const outwards = distanceTo(position.node, middle) > distanceTo(screw, middle);
    return [{ screw: screw.name, bar: foot.name, by: position.at, outwards, at: [x, y], length }];
  });
  return moves.sort((a, b) => Math.abs(a.by) - Math.abs(b.by))[0];
}

/** Returns a move in words: `move screw C 2.4 mm outwards`. */
export function moveInWords({ screw, by, outwards }: FootMove): string {
  return `move screw ${screw} ${Math.abs(by).toFixed(1)} mm ${outwards ? "outwards" : "inwards"}`;
}
