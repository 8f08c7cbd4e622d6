import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";

export interface Corner {
  readonly cornerX: number;
  readonly cornerToAxis: number;
  readonly cornerToAxisB: number;
  readonly bolt1: number;
  readonly bolt2: number;
  readonly bolt1B: number;
  readonly bolt2B: number;
  readonly plateLength: number;
  readonly plateLengthB: number;
}

/** The first bolt stands at least this far from the corner, mm. */
const FIRST = 25;

/**
 * Returns the corner of two bars and the bolts along each of them, measured from the corner. Both faces have their own
 * distance from the axis, so the two legs differ when those do. Other mounts get the same numbers for a right angle.
 */
export function cornerOf(
  given: Parameters,
  { bolt }: Bought,
  { axis, axisB, besides, margin, boltsApart }: Housing & Fixing,
): Corner {
  const [c, s] = [cosDeg(given.cornerAngle), sinDeg(given.cornerAngle)];
  const cornerToAxis = (axisB + axis * c) / s;
  const cornerToAxisB = (axis + axisB * c) / s;
  const first = (along: number) => Math.max(FIRST, along + besides + 2 + bolt.washerDiameter / 2);
  const [bolt1, bolt1B] = [first(cornerToAxis), first(cornerToAxisB)];
  return {
    cornerX: -cornerToAxis,
    cornerToAxis,
    cornerToAxisB,
    bolt1,
    bolt2: bolt1 + boltsApart,
    bolt1B,
    bolt2B: bolt1B + boltsApart,
    plateLength: bolt1 + boltsApart + margin,
    plateLengthB: bolt1B + boltsApart + margin,
  };
}
