import type { Manifest } from "../outputs/manifest.ts";
import type { Digest } from "./hash.ts";
import { bodyKey } from "./part-shape.ts";
import { printHours } from "./print-hours.ts";
import { isGood, type SetPart } from "./stage-set.ts";

/** What must be printed because it is not what was made before. */
export interface PrintAgain {
  readonly names: readonly string[];
  /** Estimated, for all of them. */
  readonly hours: number;
  /** How many parts are, by their hash or their body, what they were. */
  readonly same: number;
}

/** Returns what must be printed of a set that replaces another one. */
export function printAgain(parts: readonly SetPart[], before: Manifest, digest: Digest): PrintAgain {
  const good = parts.filter(isGood);
  const isSame = ({ part }: SetPart) => {
    const was = before.parts.find(({ name }) => name === part.request.name);
    if (was === undefined || was.hash === part.hash) return was !== undefined;
    return was.body !== undefined && was.body === bodyKey(part, digest);
  };
  const changed = good.filter((one) => !isSame(one));
  return {
    names: changed.map(({ part }) => part.request.name),
    hours: changed.reduce((sum, one) => sum + hoursOf(one), 0),
    same: good.length - changed.length,
  };
}

function hoursOf(one: SetPart): number {
  const { designed, request } = one.part;
  const bodies =
    "kept" in one
      ? one.kept.pieces
      : one.finished.pieces.map(({ made, figures }) => ({ count: made.piece.count, mass: figures.mass }));
  return printHours(bodies, designed.design.material, request.printer);
}
