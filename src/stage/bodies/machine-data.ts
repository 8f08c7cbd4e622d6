import type { Vec2 } from "../../geometry/mesh.ts";
import { type Derived, derive } from "../../parts/screw-foot/derive/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import type { FootChoice, PrinterOf, Stage } from "../machine.ts";

/** A foot with the numbers of everything on its axis. */
export interface FootAxis {
  readonly choice: FootChoice;
  readonly at: Vec2;
  /** Height of the foot's own zero over the datum, mm. */
  readonly base: number;
  readonly given: Parameters;
  readonly derived: Derived;
}

/** A stage with what several kinds of bodies are drawn from. */
export interface Machine {
  readonly stage: Stage;
  readonly printer: PrinterOf;
  readonly feet: readonly FootAxis[];
}

export function machineOf(stage: Stage, printer: PrinterOf): Machine {
  const feet = stage.feet.map((choice): FootAxis => {
    const { parameters, placement, family } = choice.part;
    const given = parameters as Parameters;
    const [x, y, base] = placement.origin;
    return { choice, at: [x, y], base, given, derived: derive(given, printer(family)) };
  });
  return { stage, printer, feet };
}

/** Returns where the belt of a loop runs on one of its nodes: height of its middle over the datum, mm. */
export function planeAt({ stage, feet }: Machine, loop: string, node: string): number | undefined {
  const foot = feet.find(({ choice }) => choice.screw === node && choice.loop === loop);
  if (foot !== undefined) return foot.base + foot.derived.plane;
  return stage.pulleys.find((pulley) => pulley.loop === loop)?.plane;
}
