import { hasErrors } from "../../core/diagnostic.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { FAMILIES } from "../../parts/index.ts";
import type { Piece } from "../../parts/piece.ts";
import { type Derived, derive } from "../../parts/screw-foot/derive/index.ts";
import type { Parameters } from "../../parts/screw-foot/parameters.ts";
import type { FootChoice, PlacedPart, PrinterOf, Stage } from "../machine.ts";

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
  /** The printed parts that have a shape. */
  readonly prints: readonly Print[];
}

/** A printed part with its pieces, in its own frame. */
export interface Print {
  readonly part: PlacedPart;
  readonly pieces: readonly Piece[];
}

export function machineOf(stage: Stage, printer: PrinterOf): Machine {
  const feet = stage.feet.map((choice): FootAxis => {
    const { parameters, placement, family } = choice.part;
    const given = parameters as Parameters;
    const [x, y, base] = placement.origin;
    return { choice, at: [x, y], base, given, derived: derive(given, printer(family)) };
  });
  return { stage, printer, feet, prints: stage.parts.flatMap((part) => printOf(stage, part, printer)) };
}

/**
 * A part with an error is not drawn: its shape means nothing. One with an error that the plan accepts is made, and
 * drawn.
 */
function printOf({ plan }: Stage, part: PlacedPart, printer: PrinterOf): Print[] {
  const isAccepted = (name: string) => plan.accept.some((one) => one.part === part.name && one.check === name);
  const family = FAMILIES.find(({ name }) => name === part.family);
  const design = family?.design(part.parameters, printer(part.family));
  if (design === undefined || hasErrors(design.diagnostics.filter(({ name }) => !isAccepted(name)))) return [];
  return [{ part, pieces: design.pieces() }];
}

/** Returns where the belt of a loop runs on one of its nodes: height of its middle over the datum, mm. */
export function planeAt({ stage, feet }: Machine, loop: string, node: string): number | undefined {
  const foot = feet.find(({ choice }) => choice.screw === node && choice.loop === loop);
  if (foot !== undefined) return foot.base + foot.derived.plane;
  return stage.pulleys.find((pulley) => pulley.loop === loop)?.plane;
}
