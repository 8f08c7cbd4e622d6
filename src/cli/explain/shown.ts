import type { Unit } from "../../core/unit.ts";
import { figure } from "../screen.ts";

/** Returns a number with at most 4 significant digits, but always down to 0.01 where it is a length or an angle. */
export function shown(value: number, unit: Unit | "" = ""): string {
  return Math.abs(value) < 10 ? figure(value) : figure(value, unit);
}
