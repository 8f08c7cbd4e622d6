import type { Vec2 } from "../../geometry/mesh.ts";
import { hullOf, opening, type Profile, rectangle } from "../../geometry/profile.ts";

/**
 * Returns the outline of a level hole that prints without support: round below, 45 degree roof, cut flat at one layer
 * (at least 0.3 mm) above the circle. `diameter` is the modelled size, `layer` the layer height, mm; drawn in x and
 * print-up. Where the flat would vanish the apex stays. Source: geometry.
 */
export function teardrop(diameter: number, layer: number, [x, up]: Vec2 = [0, 0]): Profile {
  const radius = diameter / 2;
  const apex = radius * Math.SQRT2;
  const flat = radius + Math.max(layer, 0.3);
  const top = Math.min(flat, apex - 0.01);
  const half = apex - top;
  const roof = rectangle(x - half, up + top - 0.01, x + half, up + top);
  return hullOf(opening(diameter, [x, up]), roof);
}

/** Returns the width of the flat roof in mm: the bridge that the printer must span. */
export function teardropFlat(diameter: number, layer: number): number {
  const radius = diameter / 2;
  return Math.max(0, 2 * (radius * Math.SQRT2 - radius - Math.max(layer, 0.3)));
}
