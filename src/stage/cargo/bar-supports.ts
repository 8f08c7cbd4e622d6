import { beside } from "../parts/bar-frame.ts";
import type { Plan, PlanBar } from "../schema/index.ts";

/** A screw this near to a bar in plan is taken to carry it, and so far past the bar's end. mm. Source: design rule. */
const NEAR = 100;
const PAST_END = 30;
/** A load this near to a support stands over it, and two supports this near are one, mm. */
const OVER = 0.5;

/** Where a load stands on a bar: over a support, between two (from the nearer end), or beyond the last one. mm */
export type Standing =
  | { readonly kind: "over" }
  | { readonly kind: "between"; readonly at: number; readonly length: number }
  /** `span` is that to the next support behind; 0 where there is none. */
  | { readonly kind: "beyond"; readonly length: number; readonly span: number };

/** Returns where along a moving bar it is held up, mm, in order: nuts near it, posts of carriages; else its ends. */
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
  const places = held.length > 0 ? held : [0, beside(bar, { x: bar.to[0], y: bar.to[1] }).length];
  const sorted = places.sort((a, b) => a - b);
  return sorted.filter((place, index) => index === 0 || place - (sorted[index - 1] ?? 0) > OVER);
}

/** Returns how a place along a bar stands to its supports, which are in order. mm */
export function standingOn(held: readonly number[], along: number): Standing {
  if (held.some((place) => Math.abs(place - along) <= OVER)) return { kind: "over" };
  const next = held.findIndex((place) => place > along);
  const before = (next < 0 ? held.at(-1) : held[next - 1]) ?? 0;
  const after = held[next] ?? 0;
  if (next > 0) return { kind: "between", at: Math.min(along - before, after - along), length: after - before };
  // Before the first or behind the last one: the last of the list stands before it then.
  const [end, inner] = next === 0 ? [held[0] ?? 0, held[1]] : [before, held.at(-2)];
  return { kind: "beyond", length: Math.abs(along - end), span: Math.abs((inner ?? end) - end) };
}
