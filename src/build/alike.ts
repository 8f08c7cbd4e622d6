import { canonical } from "./hash.ts";
import { shapeHash } from "./shape-hash.ts";
import type { StagePart } from "./stage-parts.ts";

/**
 * Returns the parts of a machine that are the same bodies of the same material from the same printer, each group by its
 * names: any of them serves for the others.
 */
export function alike(parts: readonly StagePart[]): string[][] {
  const groups = new Map<string, string[]>();
  for (const part of parts) {
    const shape = shapeHash(part);
    if (shape === undefined) continue;
    const { printer, name } = part.request;
    const key = [shape, part.designed.design.material, canonical(printer)].join(" ");
    groups.set(key, [...(groups.get(key) ?? []), name]);
  }
  return [...groups.values()].filter((names) => names.length > 1);
}
