import { defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Item } from "../core/item.ts";

/** Returns a note that lists the bought items whose sizes are what is usually sold; none when all are known. */
export function unmeasured(given: Readonly<Record<string, unknown>>): Diagnostic[] {
  const names = typicalItems(given);
  const [first] = names;
  if (first === undefined) return [];
  const listed = [...new Set(names.map(({ name, key }) => `${name} ${key}`))].join(", ");
  return [
    defect("typical-value-not-measured", {
      level: "note",
      path: [first.name],
      says: `sizes as usually sold, not measured: ${listed}`,
      set: `${first.name}: { row: "${first.key}", <field>: <what you measured>, measured: true }`,
    }),
  ];
}

/** Returns the bought items that nobody has measured, by the parameter they stand for. */
export function typicalItems(
  given: Readonly<Record<string, unknown>>,
): { readonly name: string; readonly key: string }[] {
  return Object.entries(given).flatMap(([name, value]) => {
    const items = (Array.isArray(value) ? value : [value]).filter(isItem);
    return items.filter(isTypical).map(({ key }) => ({ name, key }));
  });
}

/** Returns whether an item has the sizes usually sold, and nobody has measured it. */
export function isTypical({ row, measured }: Item): boolean {
  // A printing material has no size to measure.
  return row?.standing === "typical" && row.source !== "material-data" && measured.length === 0;
}

/** Returns whether a value is a bought item as a schema returns it. */
export function isItem(value: unknown): value is Item {
  return typeof value === "object" && value !== null && "key" in value && "measured" in value;
}
