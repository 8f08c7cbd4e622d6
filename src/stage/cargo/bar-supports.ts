import { beside } from "../parts/bar-frame.ts";
import type { Plan, PlanBar } from "../schema/index.ts";

/** A screw this near to a bar in plan is taken to carry it, and so far past the bar's end. mm. Source: design rule. */
const NEAR = 100;
const PAST_END = 30;

/** Returns where along a moving bar it is held up, mm: nuts near it, posts of its carriages; else its ends. */
export function supportsAlong(plan: Plan, name: string, bar: PlanBar): readonly number[] {
  const nuts = Object.values(plan.screws).flatMap(({ at }) => {
    const { along, distance, length } = beside(bar, { x: at[0], y: at[1] });
    return distance <= NEAR && along >= -PAST_END && along <= length + PAST_END ? [along] : [];
  });
  const posts = Object.values(plan.carriages).flatMap(({ post, arms }) => {
    const own = plan.bars[post];
    return own === undefined || !arms.includes(name) ? [] : [beside(bar, { x: own.from[0], y: own.from[1] }).along];
  });
  const held = [...nuts, ...posts];
  return held.length > 0 ? held : [0, beside(bar, { x: bar.to[0], y: bar.to[1] }).length];
}
