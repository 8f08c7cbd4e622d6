import type { Kernel } from "../../geometry/kernel.ts";
import type { Body } from "../../stage/bodies/index.ts";
import { type Clash, clashesOf } from "./clashes.ts";
import { type Narrow, narrowGaps } from "./gaps.ts";

/** What was found between two bodies, which are named by their places in the list. */
type Numbered<Found extends Pair> = Omit<Found, keyof Pair> & { readonly first: number; readonly second: number };

interface Pair {
  readonly first: Body;
  readonly second: Body;
}

/** Everything between the bodies of a machine that may be wrong: plain data, so that any thread can find it. */
export interface Meetings {
  readonly clashes: readonly Numbered<Clash>[];
  readonly gaps: readonly Numbered<Narrow>[];
}

/** A machine as bodies, with its travel in mm. */
export interface Bodies {
  readonly bodies: readonly Body[];
  readonly lift: number;
}

/** Compares the bodies of a machine in pairs. */
export function meetingsOf({ bodies, lift }: Bodies, kernel: Kernel): Meetings {
  const numbered = <Found extends Pair>({ first, second, ...rest }: Found) => ({
    ...rest,
    first: bodies.indexOf(first),
    second: bodies.indexOf(second),
  });
  return kernel.assemble((hall) => {
    const clashes = clashesOf(bodies, lift, hall);
    const clashing = (first: Body, second: Body) =>
      clashes.some((clash) => clash.first === first && clash.second === second);
    return { clashes: clashes.map(numbered), gaps: narrowGaps(bodies, hall, clashing).map(numbered) };
  });
}

/** Returns what was found with the bodies themselves. */
export function withBodies<Found extends { readonly first: number; readonly second: number }>(
  found: Found,
  bodies: readonly Body[],
): Omit<Found, keyof Pair> & Pair {
  return { ...found, first: bodies[found.first] as Body, second: bodies[found.second] as Body };
}
