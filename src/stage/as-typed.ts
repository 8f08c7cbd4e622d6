import type { Item } from "../core/item.ts";

/** Returns an item as a preset would state it, for the schema of a part to read. */
export function asTyped({ key, values, row, stated, measured }: Item): string | Readonly<Record<string, unknown>> {
  if (row !== undefined && stated.length === 0 && measured.length === 0) return key;
  const own = Object.fromEntries(stated.map((name) => [name, values[name]]));
  return {
    ...(row === undefined ? {} : { row: key }),
    ...own,
    ...(measured.length === 0 ? {} : { measured: [...measured] }),
  };
}
