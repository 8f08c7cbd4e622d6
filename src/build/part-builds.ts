import type { PieceWork } from "./carve.ts";
import { type Draft, drawPart, madeOf, worksOf } from "./make.ts";
import { finish } from "./order.ts";
import type { PieceResult } from "./piece-work.ts";
import type { StagePart } from "./stage-parts.ts";
import type { SetPart } from "./stage-set.ts";

/** A part that is drawn and must be built. */
export interface PartBuild {
  readonly part: StagePart;
  readonly draft: Draft;
  /** Where its bodies begin among the works. */
  readonly from: number;
}

/** What is to be built of a machine. Bodies that are alike stand among the works once, whatever their parts' names. */
export interface BuildPlan {
  /** All of them when the works were taken: each part is drawn when its first body is asked for. */
  readonly builds: readonly PartBuild[];
  /** To be taken once. */
  readonly works: Iterable<PieceWork>;
  /** The works that were taken so far. */
  readonly taken: readonly PieceWork[];
}

/** Returns what is to be built of parts. */
export function planBuilds(parts: readonly StagePart[]): BuildPlan {
  const builds: PartBuild[] = [];
  const taken: PieceWork[] = [];
  return { builds, works: drawn(parts, builds, taken), taken };
}

function* drawn(parts: readonly StagePart[], builds: PartBuild[], taken: PieceWork[]): Generator<PieceWork> {
  const known = new Map<string, number>();
  for (const part of parts) {
    const draft = drawPart(part.request, part.designed);
    const own = worksOf(draft);
    const shape = JSON.stringify(own);
    const from = known.get(shape) ?? taken.length;
    builds.push({ part, draft, from });
    if (known.has(shape)) continue;
    known.set(shape, from);
    taken.push(...own);
    yield* own;
  }
}

/** Whether all bodies of a part are among the results so far. */
export const isBuilt = ({ from, draft }: PartBuild, results: readonly (PieceResult | undefined)[]): boolean =>
  draft.pieces.every((_, index) => results[from + index] !== undefined);

/** Returns the part with its files; its own works are among the `results`. `version` is the program's. */
export function builtPart(
  { part, draft, from }: PartBuild,
  results: readonly (PieceResult | undefined)[],
  version: string,
): SetPart {
  const own = results.slice(from, from + draft.pieces.length).filter((one) => one !== undefined);
  const made = madeOf(draft, own);
  return { part, finished: finish(made, version), found: made.diagnostics.slice(part.designed.diagnostics.length) };
}
