import { results } from "../../core/calculation.ts";
import { distanceToSegment, type LoopSpan, type Point, smoothIdlerRadius } from "../../mechanics/index.ts";
import type { BeltNode, MotorPulley } from "../machine.ts";
import type { SolvedLoop } from "./solve.ts";

/** A belt as a strip that stands upright along its spans; mm, heights over the datum. */
export interface Strip {
  readonly name: string;
  readonly nodes: readonly BeltNode[];
  readonly spans: readonly LoopSpan[];
  readonly width: number;
  readonly thickness: number;
  /** How far the belt reaches from its pitch line towards the inside of its loop, and towards the outside. */
  readonly inner: number;
  readonly outer: number;
  /** The motor's pulley of this loop; undefined when it has no sound place, and then no height is known. */
  readonly pulley: MotorPulley | undefined;
}

export function stripOf({ ordered, nodes, belt }: SolvedLoop, pulleys: readonly MotorPulley[]): Strip {
  const { name, plan } = ordered;
  const { thickness, toothHeight, pitchLineDistance } = plan.belt.values;
  // What a belt adds to the radius of an idler on its one side and on its other.
  const round = { diameter: 2, thickness, tooth: toothHeight, line: pitchLineDistance };
  const { back, teeth } = results(smoothIdlerRadius, round);
  const pulley = pulleys.find(({ loop }) => loop === name);
  return { name, nodes, spans: belt.spans, width: plan.width, thickness, inner: teeth - 1, outer: back - 1, pulley };
}

/** Returns the span of a belt that passes a place nearest: which, its pitch line's distance, the belt beyond. */
export function nearestSpan(strip: Strip, point: Point): { at: number; distance: number; beyond: number } {
  const distances = strip.spans.map((span) => distanceToSegment(point, span));
  const at = distances.indexOf(Math.min(...distances));
  return { at, distance: distances[at] as number, beyond: beyondOf(strip, at, point) };
}

/** The belt beyond its pitch line towards a place: its teeth towards the inside, which lies to the left. */
export function beyondOf({ spans, inner, outer }: Strip, at: number, { x, y }: Point): number {
  const { from, to } = spans[at] as LoopSpan;
  return (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) > 0 ? inner : outer;
}

/** Returns a span by the nodes at its ends: `A to B`. */
export function spanName({ nodes }: Pick<Strip, "nodes">, at: number): string {
  return `${(nodes[at] as BeltNode).name} to ${(nodes[(at + 1) % nodes.length] as BeltNode).name}`;
}

/** Returns how high a belt reaches, mm over the datum; undefined when its plane is not known. */
export function heightsOf({ pulley, width }: Strip): readonly [number, number] | undefined {
  return pulley === undefined ? undefined : [pulley.plane - width / 2, pulley.plane + width / 2];
}
