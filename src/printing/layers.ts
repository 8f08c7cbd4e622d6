import { down, tidy, up } from "../core/rounding.ts";
import type { Printer } from "./printer.ts";

type Layers = Pick<Printer, "layer" | "firstLayer">;

/** Returns the lowest layer boundary at or above a height over the bed. mm. */
export function layerAbove(height: number, { layer, firstLayer }: Layers): number {
  return height <= firstLayer ? firstLayer : tidy(firstLayer + up(height - firstLayer, layer));
}

/** Returns the highest layer boundary at or below a height over the bed, 0 below the first layer. mm. */
export function layerBelow(height: number, { layer, firstLayer }: Layers): number {
  return height + 1e-9 < firstLayer ? 0 : tidy(firstLayer + down(height - firstLayer, layer));
}

/** Returns the nearest layer boundary; a tie goes down, since a shim can only raise. mm. */
export function layerNearest(height: number, { layer, firstLayer }: Layers): number {
  const steps = Math.ceil((height - firstLayer) / layer - 0.5 - 1e-6);
  return tidy(firstLayer + Math.max(0, steps) * layer);
}
