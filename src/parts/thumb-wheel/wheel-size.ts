import { LOCK_NUTS } from "../../catalogue/lock-nuts.ts";
import { NUTS } from "../../catalogue/nuts.ts";
import { row } from "../../core/table.ts";
import { layerAbove } from "../../printing/layers.ts";
import type { Printer } from "../../printing/printer.ts";

/** What the pocket is deeper than the nut, and the least plastic between nut and slider washer, mm. */
export const NUT_ROOM = 0.4;
export const LEAST_FLOOR = 3;

export interface WheelNut {
  readonly acrossFlats: number;
  readonly height: number;
}

/** Returns the usual nut of a thread, plain or with a locking ring. mm. Source: ISO 4032 and DIN 985. */
export function usualNut(thread: string, lock: boolean): WheelNut {
  const { acrossFlats, height } = row(lock ? LOCK_NUTS : NUTS, thread).values;
  return { acrossFlats, height };
}

/** Returns the usual wheel diameter of a thread, mm. Source: design rule. */
export function usualDiameter(thread: string): number {
  return thread === "M3" || thread === "M4" ? 20 : 24;
}

/** Returns the usual height of a wheel in whole layers, mm: the nut's pocket and a floor under it. */
export function usualHeight(nutHeight: number, printer: Printer): number {
  return layerAbove(nutHeight + NUT_ROOM + LEAST_FLOOR, printer);
}

/** Returns the plastic between the nut and the slider face, mm. */
export function floorUnder(height: number, nutHeight: number): number {
  return height - nutHeight - NUT_ROOM;
}
