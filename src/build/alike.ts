import { printedBody } from "./part-shape.ts";
import type { StagePart } from "./stage-parts.ts";

/**
 * Returns the parts of a machine that are the same bodies of the same material from the same printer, each group by its
 * names: any of them serves for the others.
 */
export function alike(parts: readonly StagePart[]): string[][] {
  const groups = new Map<string, string[]>();
  for (const part of parts) {
    const body = printedBody(part);
    if (body === undefined) continue;
    const { printer, name } = part.request;
    const key = JSON.stringify([body, printer]);
    groups.set(key, [...(groups.get(key) ?? []), name]);
  }
  return [...groups.values()].filter((names) => names.length > 1);
}

/** Returns for each part that is the same body as one before it the name of the first of its kind. */
export function firstOfKind(groups: readonly (readonly string[])[]): ReadonlyMap<string, string> {
  return new Map(groups.flatMap(([first = "", ...others]) => others.map((name) => [name, first] as const)));
}
