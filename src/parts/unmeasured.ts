import type { Diagnostic } from "../core/diagnostic.ts";
import type { Item } from "../core/parameter.ts";

/** Returns one note per bought item whose size is only what the trade usually sells. */
export function unmeasured(given: Readonly<Record<string, unknown>>): Diagnostic[] {
  return Object.entries(given).flatMap(([name, value]) => {
    const items = (Array.isArray(value) ? value : [value]).filter(isItem);
    const typical = items.filter(({ row, measured }) => {
      // A printing material has no size to measure.
      return row?.standing === "typical" && row.source !== "material-data" && measured.length === 0;
    });
    return typical.slice(0, 1).map(({ key }) => ({
      name: "typical-value-not-measured",
      level: "note" as const,
      path: [name],
      says: `the sizes of ${key} are what is usually sold, not what you measured`,
      why: "makers differ by some tenths of a millimetre, and the print follows the number",
      set: `${name}: { row: "${key}", <field>: <what you measured>, measured: true }`,
    }));
  });
}

function isItem(value: unknown): value is Item {
  return typeof value === "object" && value !== null && "key" in value && "measured" in value;
}
