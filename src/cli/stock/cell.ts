import type { Unit } from "../../core/unit.ts";
import { shown } from "../explain/shown.ts";

/** Returns a value of a table as it stands in a column; a dash where the row has none. */
export function cell(value: number | string | undefined, unit: Unit): string {
  if (value === undefined || value === "") return "-";
  return typeof value === "number" ? shown(value, unit) : value;
}
