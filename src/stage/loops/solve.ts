import { isRefusal } from "../../core/calculation.ts";
import { type BeltLoop, beltLoop, type Point, type Slide } from "../../mechanics/index.ts";
import type { BeltNode } from "../machine.ts";
import { type LoopSetup, MOTOR } from "./nodes.ts";
import { type Tried, tryStock } from "./stock.ts";

/** A loop whose nodes have an order, where the plan has them. */
export interface OrderedLoop extends LoopSetup {
  readonly nominal: BeltLoop;
}

/** A loop with what was bought for it and where that puts its nodes. */
export interface SolvedLoop {
  readonly ordered: OrderedLoop;
  /** Nodes before this loop's own slide moves one of them: the motor stands where another loop may have put it. */
  readonly before: readonly BeltNode[];
  readonly nodes: readonly BeltNode[];
  readonly belt: BeltLoop;
  /** The slide that this loop sets; none when it has none, or another loop sets the motor. */
  readonly slide: Slide | undefined;
  /** The loop that put the motor where it stands, if another one did, and the slide it used. */
  readonly led: { readonly loop: string; readonly slide: Slide } | undefined;
  readonly tried: readonly Tried[];
  readonly chosen: Tried | undefined;
}

/**
 * Returns what to buy for each loop. The motor stands in one place, so of the loops that slide it one leads, and the
 * others must fit where that one puts it: of all leads and stock loops, the one with which most loops fit.
 */
export function solveTogether(loops: readonly OrderedLoop[]): readonly SolvedLoop[] {
  const leaders = loops.filter(({ plan }) => plan.slide?.node === MOTOR);
  let best: { readonly solved: readonly SolvedLoop[]; readonly fitting: number } | undefined;
  for (const leader of leaders) {
    const slide = leader.plan.slide as Slide;
    const tried = tryStock(leader.plan, leader.nodes, slide);
    for (const chosen of tried.filter(({ lost }) => lost === undefined)) {
      const lead = solvedBy(leader, leader.nodes, slide, tried, chosen, undefined);
      const solved = loops.map((loop) => (loop === leader ? lead : follow(loop, lead)));
      const fitting = solved.filter((one) => one.chosen !== undefined).length;
      if (best === undefined || fitting > best.fitting) best = { solved, fitting };
    }
  }
  return best?.solved ?? loops.map(alone);
}

/** A loop by itself: its own slide moves what it moves. */
function alone(loop: OrderedLoop): SolvedLoop {
  const slide = ownSlide(loop);
  const tried = tryStock(loop.plan, loop.nodes, slide);
  return solvedBy(loop, loop.nodes, slide, tried, firstFit(tried), undefined);
}

/** A loop whose motor stands where another loop put it. */
function follow(loop: OrderedLoop, lead: SolvedLoop): SolvedLoop {
  const motor = lead.nodes.find(({ kind }) => kind === "motor") as BeltNode;
  const moved = withPlace(loop.nodes, MOTOR, motor);
  const own = loop.plan.slide?.node === MOTOR ? undefined : ownSlide(loop);
  const sound = !isRefusal(beltLoop(moved));
  const nodes = sound ? moved : loop.nodes;
  const tried = sound ? tryStock(loop.plan, nodes, own) : [];
  return solvedBy(loop, nodes, own, tried, firstFit(tried), {
    loop: lead.ordered.name,
    slide: lead.slide as Slide,
  });
}

/** A slide may move the motor or an idler; a screw stays where the stage needs it. */
function ownSlide({ plan, nodes }: OrderedLoop): Slide | undefined {
  const screw = nodes.some(({ name, kind }) => name === plan.slide?.node && kind === "screw");
  return screw ? undefined : plan.slide;
}

const firstFit = (tried: readonly Tried[]) => tried.find(({ lost }) => lost === undefined);

function solvedBy(
  ordered: OrderedLoop,
  before: readonly BeltNode[],
  slide: Slide | undefined,
  tried: readonly Tried[],
  chosen: Tried | undefined,
  led: SolvedLoop["led"],
): SolvedLoop {
  const position = chosen?.loop.position;
  const found = position !== undefined && !isRefusal(position) ? position : undefined;
  const nodes = found && slide ? withPlace(before, slide.node, found.node) : before;
  const belt = found?.loop ?? (beltLoop(nodes) as BeltLoop);
  return { ordered, before, nodes, belt, slide, led, tried, chosen };
}

/** Returns nodes with one of them at another place. */
export function withPlace(nodes: readonly BeltNode[], name: string, { x, y }: Point): readonly BeltNode[] {
  return nodes.map((node) => (node.name === name ? { ...node, x, y } : node));
}
