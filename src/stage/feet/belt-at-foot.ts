import { isRefusal } from "../../core/calculation.ts";
import { shaftPull } from "../../mechanics/shaft-pull.ts";
import type { LoopChoice } from "../machine.ts";
import type { Plan } from "../schema/index.ts";

/** What the belt of a loop does at one screw. */
export interface BeltAtFoot {
  /** The two spans as they leave the pulley, in the foot's own frame. */
  readonly spans: readonly { readonly azimuth: number; readonly side: "left" | "right" }[];
  readonly tension: number;
  /** deg */
  readonly wrap: number;
  /** N */
  readonly pull: number;
}

/** Returns what the belt does at a screw whose foot's frame is turned by `angle`; undefined where it is not on it. */
export function beltAt({ nodes, belt, loop }: LoopChoice, screw: string, plan: Plan, angle: number) {
  const index = nodes.findIndex(({ name }) => name === screw);
  const [node, leaving] = [nodes[index], belt.spans[index]];
  const coming = belt.spans.at(index - 1);
  const wrap = belt.wraps[index];
  if (node === undefined || leaving === undefined || coming === undefined || wrap === undefined) return undefined;
  // Round a pulley inside the loop the belt runs counter-clockwise: it leaves on the right of its own direction.
  const [ahead, behind] = node.inside ? (["right", "left"] as const) : (["left", "right"] as const);
  const spans: BeltAtFoot["spans"] = [
    { azimuth: hundredth(leaving.direction - angle), side: ahead },
    { azimuth: hundredth(coming.direction + 180 - angle), side: behind },
  ];
  const tension = plan.loops[loop]?.tension ?? 0;
  const outcome = shaftPull.compute({ tension, wrap });
  return { spans, tension, wrap, pull: isRefusal(outcome) ? 2 * tension : outcome.pull };
}

/** Directions to a hundredth of a degree, from 0 to below 360. */
function hundredth(angle: number): number {
  const whole = ((angle % 360) + 360) % 360;
  return (Math.round(whole * 100) / 100) % 360;
}
