import { shortHash } from "./hash.ts";
import { drawPart } from "./make.ts";
import type { StagePart } from "./stage-parts.ts";

/** Returns what stands for the solids of a part; undefined for one that an error forbids. */
export function shapeHash({ request, designed }: StagePart): string | undefined {
  const { pieces } = drawPart(request, designed);
  return pieces.length === 0 ? undefined : shortHash(pieces.map(({ name, solid, count }) => ({ name, solid, count })));
}
