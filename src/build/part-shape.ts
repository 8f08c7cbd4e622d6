import { shapeOf } from "../parts/piece.ts";
import { drawPart } from "./make.ts";
import type { StagePart } from "./stage-parts.ts";

/** Returns what stands for the solids of a part; undefined for one that an error forbids. */
export function partShape({ request, designed }: StagePart): string | undefined {
  const { pieces } = drawPart(request, designed);
  return pieces.length === 0 ? undefined : shapeOf(pieces);
}
