import { isRefusal, type Refusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { beltLoop } from "../../mechanics/index.ts";
import type { Topic } from "../fact.ts";
import type { BeltGap, BeltNode, LoopChoice, MotorPulley } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { stageDefect } from "../stage-defects.ts";
import { assemblyNotes } from "./assembly.ts";
import { beltDefects, meshOf } from "./checks.ts";
import { gapDefects } from "./gap-defects.ts";
import { gapsOf } from "./gaps.ts";
import { idlerStands } from "./idler-stand.ts";
import { motorPull } from "./motor-pull.ts";
import { type LoopSetup, MOTOR, setupOf } from "./nodes.ts";
import { listedOrder, shortestOrder } from "./order.ts";
import { loopSection } from "./report.ts";
import { type OrderedLoop, type SolvedLoop, solveTogether } from "./solve.ts";
import type { Outcome } from "./stock-cures.ts";
import { stockDefects } from "./stock-defects.ts";
import { stripOf } from "./strips.ts";

/** Returns the loops of the machine in plan: order of the nodes, lengths, stock, wraps, gaps. */
export function solveLoops(plan: Plan, pulleys: readonly MotorPulley[]): Topic & Loops {
  // Ways out are tried by solving the loops of the changed plan; those of that plan are not tried in turn.
  const solve = (changed: Plan) => solvedLoops(changed, pulleys, undefined).diagnostics;
  return solvedLoops(plan, pulleys, outcomeOf(plan, solve));
}

/** Returns whether nothing louder than a note is told of the loops; it takes less time than the ways out do. */
export function loopsAreSound(plan: Plan, pulleys: readonly MotorPulley[]): boolean {
  return solvedLoops(plan, pulleys, undefined).diagnostics.every(({ level }) => level === "note");
}

interface Loops {
  readonly loops: readonly LoopChoice[];
}

/** What a changed plan is told of that this one is not, counted; more than any of that where the loop is not helped. */
function outcomeOf(plan: Plan, solve: (plan: Plan) => readonly Diagnostic[]): Outcome {
  const keyOf = ({ name, path, level }: Diagnostic) => JSON.stringify([name, path[1], level]);
  const loud = (of: Plan) => solve(of).filter(({ level }) => level !== "note");
  let had: Set<string> | undefined;
  return (changed, loop) => {
    had ??= new Set(loud(plan).map(keyOf));
    const left = loud(changed);
    const stuck = left.some(
      ({ name, path, level }) => UNBOUGHT.includes(name) && path[1] === loop && level === "error",
    );
    return (stuck ? 1000 : 0) + left.filter((one) => !had?.has(keyOf(one))).length;
  };
}

/** How it is told that no loop fits. */
const UNBOUGHT: readonly string[] = ["no-stock-loop-within-slide", "slide-disturbs-other-loop"];

/** Without an `outcome` no ways out are looked for. */
function solvedLoops(plan: Plan, pulleys: readonly MotorPulley[], outcome: Outcome | undefined): Topic & Loops {
  const setups = Object.entries(plan.loops).map(([name, loop]) => setupOf(plan, name, loop));
  const ordered = setups.map(inOrder);
  const loops = solveTogether(ordered.filter((loop) => "nominal" in loop));
  const strips = loops.map((loop) => stripOf(loop, pulleys));
  const gaps = strips.map((strip) => [...gapsOf(plan, strip, strips)].sort(byMargin));
  const gapsAt = (index: number) => gaps[index] as readonly BeltGap[];
  const motor = motorPull(plan, loops, pulleys);
  const stands = idlerStands(plan, loops, pulleys);
  return {
    loops: loops.map((loop, index) => choiceOf(loop, gapsAt(index))),
    sections: [
      ...loops.map((loop, index) => loopSection(plan, loop, gapsAt(index))),
      ...motor.sections,
      ...(stands.facts.length === 0 ? [] : [{ title: "Idlers", facts: stands.facts }]),
    ],
    diagnostics: [
      ...ordered.flatMap((loop) => ("nominal" in loop ? [] : loop.diagnostics)),
      ...loops.flatMap((loop) => [...stockDefects(plan, loop, outcome), ...beltDefects(plan, loop)]),
      ...loops.flatMap(({ ordered: { name } }, index) => gapDefects(plan, name, gapsAt(index), pulleys)),
      ...motor.diagnostics,
      ...stands.diagnostics,
      ...assemblyNotes(plan, loops, pulleys),
    ],
  };
}

const byMargin = (a: BeltGap, b: BeltGap) => a.gap - a.error - (b.gap - b.error);

function choiceOf({ ordered, nodes, belt, tried, chosen, slide }: SolvedLoop, gaps: readonly BeltGap[]): LoopChoice {
  const position = chosen?.loop.position;
  const found = position !== undefined && !isRefusal(position) ? position : undefined;
  return {
    loop: ordered.name,
    nodes,
    belt,
    meshes: nodes.map((node, at) => meshOf(node, belt.wraps[at] as number)),
    nominal: ordered.nominal.length,
    stock: tried.map(({ loop }) => loop),
    bought: chosen?.loop.length,
    slid: slide === undefined || found === undefined ? undefined : { node: slide.node, at: found.at },
    gaps,
  };
}

/** A loop with its nodes in the order in which the belt meets them, or why there is none. */
function inOrder(setup: LoopSetup): OrderedLoop | { readonly diagnostics: readonly Diagnostic[] } {
  const { nodes, plan, unknown } = setup;
  // What a node lacks is complained of where it is read: as a reference, or as a parameter of its foot.
  if (unknown.length > 0) return { diagnostics: [] };
  const { nodes: best, whole } = plan.inOrder ? { nodes: listedOrder(nodes), whole: true } : shortestOrder(nodes);
  if (best === undefined) return { diagnostics: [tangled(setup, whole)] };
  const turned = fromMotor(best);
  const nominal = beltLoop(turned);
  return isRefusal(nominal) ? { diagnostics: [refused(setup.name, nominal)] } : { ...setup, nodes: turned, nominal };
}

/** The same round, told from the motor, or else from the leftmost node. */
function fromMotor(nodes: readonly BeltNode[]): readonly BeltNode[] {
  const motor = nodes.findIndex(({ name }) => name === MOTOR);
  const left = nodes.reduce((best, { x }, index) => (x < (nodes[best] as BeltNode).x ? index : best), 0);
  const start = motor < 0 ? left : motor;
  return [...nodes.slice(start), ...nodes.slice(0, start)];
}

function tangled({ name, nodes, plan }: LoopSetup, whole: boolean): Diagnostic {
  if (!whole) {
    const says = `no order of the ${nodes.length} nodes of ${name} was found in reasonable time`;
    const set = "nodes: as the belt meets them, and inOrder: true";
    return stageDefect("loop-tangled-or-not-touching", { level: "error", path: ["loops", name, "nodes"], says, set });
  }
  const outcome = beltLoop(plan.inOrder ? counterClockwise(nodes) : likelyOrder(nodes));
  if (isRefusal(outcome)) return refused(name, outcome);
  // Only reached where rounding lets the one way of asking pass what the other does not.
  return refused(name, { refused: "the belt hardly touches one of the nodes" });
}

function refused(loop: string, { refused: reason, defect }: Refusal): Diagnostic {
  const amounts = { found: defect?.found, limit: defect?.limit };
  const because = defect === undefined ? {} : { why: defect.why };
  const set = defect?.set ?? "another place or side for one of the nodes";
  const says = `loop ${loop}: ${reason}`;
  const path = ["loops", loop, "nodes"];
  return stageDefect("loop-tangled-or-not-touching", { level: "error", path, says, set, ...amounts, ...because });
}

/** The listed order in the sense that goes round counter-clockwise, by the area it encloses. */
function counterClockwise(nodes: readonly BeltNode[]): readonly BeltNode[] {
  const twice = nodes.reduce((sum, { x, y }, index) => {
    const next = nodes[(index + 1) % nodes.length] as BeltNode;
    return sum + x * next.y - y * next.x;
  }, 0);
  return twice < 0 ? [...nodes].reverse() : nodes;
}

/** The nodes as they stand round the middle of those inside: the order that a person would try first. */
function likelyOrder(nodes: readonly BeltNode[]): readonly BeltNode[] {
  const inside = nodes.filter((node) => node.inside);
  const [x, y] = [mean(inside.map((node) => node.x)), mean(inside.map((node) => node.y))];
  return [...nodes].sort((a, b) => Math.atan2(a.y - y, a.x - x) - Math.atan2(b.y - y, b.x - x));
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
