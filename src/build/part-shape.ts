import { onceForEach } from "../core/once-for-each.ts";
import { shapeOf } from "../parts/piece.ts";
import type { Digest } from "./hash.ts";
import { drawPart } from "./make.ts";
import type { StagePart } from "./stage-parts.ts";

/** Returns what stands for the solids of a part; undefined for one that an error forbids. */
function partShape({ request, designed }: StagePart): string | undefined {
  const { pieces } = drawPart(request, designed);
  return pieces.length === 0 ? undefined : shapeOf(pieces);
}

/**
 * Returns what stands for the printed body of a part, its solids and its material, as text. A part with the same one
 * need not be printed again, whatever loads it was checked for. Undefined for one that an error forbids.
 */
export const printedBody = onceForEach((part: StagePart): string | undefined => {
  const shape = partShape(part);
  return shape === undefined ? undefined : JSON.stringify([shape, part.designed.design.material]);
});

/** Returns the same in few digits. */
export function bodyKey(part: StagePart, digest: Digest): string | undefined {
  const words = printedBody(part);
  return words === undefined ? undefined : digest(new TextEncoder().encode(words)).slice(0, 16);
}
