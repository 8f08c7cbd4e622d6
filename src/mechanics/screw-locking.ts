import type { Refusal } from "../core/calculation.ts";

/** Whether a raised load stays where it is without power. */
export type Locking = "locks" | "may run down" | "runs down";

/** Friction of a lead screw in its nut, least and most; common practice. At the start it is 1.3 times as high. */
export const NUT_FRICTION = {
  "dry brass": [0.15, 0.2],
  "greased brass": [0.1, 0.15],
  plastic: [0.08, 0.15],
} as const;

/** Vibration asks for this much more friction than standing still does; common practice. */
const VIBRATION = 1.3;

/**
 * Returns whether a screw holds its load, over the range of friction that its nut and grease may have.
 *
 * It locks only when the least friction is 1.3 times the critical friction of screwTorque; it runs down when even the
 * highest friction is not above the critical one; between them it may. Refuses a range that is none. Source: key
 * `shigley`, 8-2; the 1.3 is common practice.
 */
export function screwLocking(critical: number, low: number, high: number): Locking | Refusal {
  if (!(critical > 0 && low > 0 && high >= low && [critical, high].every(Number.isFinite))) {
    return { refused: "the friction range is empty or not above 0" };
  }
  if (low >= VIBRATION * critical) return "locks";
  return high <= critical ? "runs down" : "may run down";
}
