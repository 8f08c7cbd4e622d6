import type { Compared } from "./compare.ts";

/** Which of two plans have errors. */
export interface Wrong {
  readonly before: boolean;
  readonly after: boolean;
}

/** What an error in one of two plans leaves uncertain between their machines. */
export interface NotCompared {
  /** Names of parts that only one machine has, and that an error may have kept out of the other. */
  readonly parts: readonly string[];
  /** Whether what is to be bought is certain: no error has left anything out of either machine. */
  readonly purchases: boolean;
}

/** Returns what cannot be compared because of errors in the plans; nothing where neither has any. */
export function notCompared(before: Compared, after: Compared, wrong: Wrong): NotCompared {
  const parts = [...(wrong.after ? lacking(after, before) : []), ...(wrong.before ? lacking(before, after) : [])];
  const partial = (wrong.before && isPartial(before)) || (wrong.after && isPartial(after));
  return { parts, purchases: parts.length === 0 && !partial };
}

/** Returns the parts that the one machine lacks and the other has, in the other's order. */
function lacking(one: Compared, other: Compared): string[] {
  const own = new Set(one.parts.map(({ request }) => request.name));
  return other.parts.map(({ request }) => request.name).filter((name) => !own.has(name));
}

/** Whether something was left out of a machine: what follows from an error, or a foot that no stack fits. */
function isPartial({ stage }: Compared): boolean {
  return stage.partly === true || stage.feet.length < Object.keys(stage.plan.screws).length;
}
