import type { Manifest } from "../outputs/manifest.ts";
import { printHours } from "./print-hours.ts";
import { isGood, type SetPart } from "./stage-set.ts";

/** What must be printed because it is not what was made before. */
export interface PrintAgain {
  readonly names: readonly string[];
  /** Estimated, for all of them. */
  readonly hours: number;
  /** How many parts are, by their hash, what they were. */
  readonly same: number;
}

/** Returns what must be printed of a set that replaces another one, by the parts' hashes. */
export function printAgain(parts: readonly SetPart[], before: Manifest): PrintAgain {
  const good = parts.filter(isGood);
  const isSame = ({ part }: SetPart) =>
    before.parts.some(({ name, hash }) => name === part.request.name && hash === part.hash);
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
