import type { Vec2 } from "../../geometry/mesh.ts";
import { opening } from "../../geometry/profile.ts";
import { prism, type Solid } from "../../geometry/solid.ts";

const OVERRUN = 1;

/** Returns the upright groove that keeps the edge where two mating faces meet off a bar's corner. mm. */
export function cornerRelief(at: Vec2, radius: number, bottom: number, top: number): Solid {
  return prism(opening(2 * radius, at), bottom - OVERRUN, top + OVERRUN);
}
