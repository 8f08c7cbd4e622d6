import type { HardwareLine } from "../parts/family.ts";

/** One thing to buy, for the whole machine. */
export interface Bought {
  readonly item: string;
  /** What the machine holds. */
  readonly needed: number;
  /** On top, since small things get lost or break. */
  readonly spares: number;
  /** Sold in packs of so many; 1 for single pieces. */
  readonly pack: number;
  /** What to order: needed and spares, rounded up to whole packs. */
  readonly buy: number;
  /** Length as it is sold, mm. */
  readonly length?: number;
  readonly teeth?: number;
  /** The parts and places it goes to. */
  readonly usedBy: readonly string[];
  readonly notes: readonly string[];
}

/** What one part or place of the machine needs. */
export interface Need extends HardwareLine {
  readonly usedBy: readonly string[];
  readonly length?: number;
  readonly teeth?: number;
}

/** Screws, nuts, washers and rings come in packs and get lost; lead screws, bearings and pulleys do not. */
const SMALL = /\b(?:screw|bolt|nut|washer|ring|insert|eccentric|spring)s?\b/;
const LARGE = /^(?:lead screw|lead nut|plate|heater|bearing|pulley|idler|motor|bar|belt)\b/;

/** Sizes of packs that are sold everywhere. common practice */
const PACKS = [10, 25, 50, 100];

/** Returns the list of a machine: equal items of equal length once, in the order of their names and lengths. */
export function grouped(needs: readonly Need[], withSpares: boolean): Bought[] {
  const groups = new Map<string, Need[]>();
  for (const need of needs) {
    const key = JSON.stringify([need.item, need.length ?? 0]);
    groups.set(key, [...(groups.get(key) ?? []), need]);
  }
  return [...groups.values()].map((group) => boughtOf(group, withSpares)).sort(byName);
}

function boughtOf(group: readonly Need[], withSpares: boolean): Bought {
  const [first] = group;
  if (first === undefined) throw new Error("a group is never empty");
  const { item, length, teeth } = first;
  const needed = group.reduce((sum, { count }) => sum + count, 0);
  const small = SMALL.test(item) && !LARGE.test(item);
  const spares = small && withSpares && needed > 0 ? Math.max(1, Math.ceil(needed / 10)) : 0;
  const pack = small ? packFor(needed + spares) : 1;
  return {
    item,
    needed,
    spares,
    pack,
    buy: Math.ceil((needed + spares) / pack) * pack,
    ...(length === undefined ? {} : { length }),
    ...(teeth === undefined ? {} : { teeth }),
    usedBy: [...new Set(group.flatMap(({ usedBy }) => usedBy))],
    notes: [...new Set(group.flatMap(({ note }) => note ?? []))],
  };
}

/** Returns the smallest pack that holds all, else the largest. */
function packFor(count: number): number {
  return PACKS.find((pack) => pack >= count) ?? PACKS.at(-1) ?? 1;
}

function byName(a: Bought, b: Bought): number {
  if (a.item !== b.item) return a.item < b.item ? -1 : 1;
  return (a.length ?? 0) - (b.length ?? 0);
}
