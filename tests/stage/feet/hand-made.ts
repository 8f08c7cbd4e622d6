import type { MeshedNode } from "../../../src/mechanics/idler-duties.ts";
import type { Printer } from "../../../src/printing/printer.ts";
import { chooseFeet } from "../../../src/stage/feet/index.ts";
import { motorPulleys } from "../../../src/stage/feet/motor-pulleys.ts";
import type { Plan } from "../../../src/stage/index.ts";
import type { FootChoice, LoadCases, LoopChoice } from "../../../src/stage/machine.ts";
import { beltNode } from "../../support/belt-node.ts";
import { laidLoop } from "../../support/laid-loop.ts";
import { printerWith } from "../../support/printer.ts";

/** A loop that is laid by hand: its nodes in the order of the belt, counter-clockwise. */
export function handLoop(loop: string, nodes: readonly MeshedNode[]): LoopChoice {
  return laidLoop(
    loop,
    nodes.map((node) => beltNode(node)),
  );
}

/** What the screws carry, when all carry the same: much while somebody leans on the plate, little else. */
export function evenLoads(plan: Plan, worst: number, least: number, crash = 0): LoadCases {
  const all = (value: number) => Object.fromEntries(Object.keys(plan.screws).map((name) => [name, value]));
  const weight = (load: number) => Object.keys(plan.screws).length * load;
  const one = (name: string, load: number) => {
    return { name, weight: weight(load), shares: all(load), least: all(load), leaned: load === worst };
  };
  return { weight: 3 * worst, cases: [one("empty", least), one("hand", worst)], worst: all(worst), crash };
}

interface Known {
  readonly loops?: readonly LoopChoice[];
  readonly loads?: LoadCases;
  readonly printer?: Printer;
}

/** Works out the feet of a plan without the other topics, or with hand-made ones. */
export function feetOf(plan: Plan, { loops = [], loads, printer = printerWith() }: Known = {}) {
  const drive = motorPulleys(plan);
  const outcome = chooseFeet(plan, drive.pulleys, loops, loads, () => printer);
  const of = (screw: string): FootChoice => {
    const foot = outcome.feet.find((one) => one.screw === screw);
    if (foot === undefined) throw new RangeError(`no foot of ${screw}: ${JSON.stringify(outcome.diagnostics)}`);
    return foot;
  };
  return { ...outcome, drive, of };
}
