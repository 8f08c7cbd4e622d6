import type { Vec2 } from "../../../geometry/mesh.ts";
import { opening } from "../../../geometry/profile.ts";
import { prism, type Solid } from "../../../geometry/solid.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import type { Printer } from "../../../printing/printer.ts";

/** Returns the widening of a bolt hole in the first layer, which spreads into it on the bed. mm. */
export function bedHole(at: Vec2, hole: number, bed: number, printer: Printer): Solid {
  const diameter = uprightHole(hole, printer) + 2 * printer.firstLayerSpread;
  return prism(opening(diameter, at), bed - 1, bed + printer.firstLayer);
}
