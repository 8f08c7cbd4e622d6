import type { Refusal } from "../core/calculation.ts";
import { bounded } from "./bounded.ts";

/** Pull of a belt of one tension on a shaft that it wraps. */
export const shaftPull = bounded({
  name: "shaft-pull",
  title: "Pull of a belt on a shaft",
  inputs: {
    tension: { symbol: "T", unit: "N", meaning: "tension of both spans" },
    wrap: { symbol: "w", unit: "deg", meaning: "angle over which the belt lies on it" },
  },
  results: { pull: { symbol: "F", unit: "N", meaning: "pull on the shaft" } },
  formulas: { pull: "2 * T * sind(w / 2)" },
  source: "statics",
  valid: "both spans equally tight, as on a drive at rest",
  examples: [
    {
      given: { tension: 15, wrap: 180 },
      gives: { pull: 30 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
    {
      given: { tension: 15, wrap: 60 },
      gives: { pull: 15 },
      within: 1e-9,
      source: "statics: own arithmetic",
    },
  ],
  limits: { tension: { from: 0 }, wrap: { from: 0, to: 360 } },
  compute: ({ tension, wrap }) => ({ pull: 2 * tension * Math.sin((wrap * Math.PI) / 360) }),
});

export interface SpanPull {
  /** Direction away from the shaft, counter-clockwise from +x, deg. */
  readonly direction: number;
  readonly tension: number;
}

/**
 * Returns the pull of several spans on one shaft, N, and its direction, deg.
 *
 * For shafts with more than one loop or spans of unequal tension. Refuses what is not a number. Source: statics.
 */
export function summedPull(spans: readonly SpanPull[]): { pull: number; direction: number } | Refusal {
  const radians = (direction: number) => (direction * Math.PI) / 180;
  const x = spans.reduce((sum, span) => sum + span.tension * Math.cos(radians(span.direction)), 0);
  const y = spans.reduce((sum, span) => sum + span.tension * Math.sin(radians(span.direction)), 0);
  const pull = Math.hypot(x, y);
  if (!Number.isFinite(pull)) return { refused: "a tension or direction is not a number" };
  const noise = 1e-12 * spans.reduce((sum, span) => sum + Math.abs(span.tension), 0);
  const quiet = (part: number) => (Math.abs(part) < noise ? 0 : part);
  return { pull, direction: (Math.atan2(quiet(y), quiet(x)) * 180) / Math.PI };
}
