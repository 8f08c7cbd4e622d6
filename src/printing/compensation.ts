import type { Printer } from "./printer.ts";

/**
 * Three sizes: nominal is the hardware, wanted is the printed size (nominal plus a fit), modelled is what is drawn so
 * that the print comes out as wanted. These functions take the second to the third. Material shrink is not in them: it
 * is a scale of the whole outline, applied when the mesh is written.
 */

/** Returns the modelled diameter of a hole whose axis is upright in print. mm. */
export function uprightHole(wanted: number, printer: Printer): number {
  return wanted + printer.holeShrinkVertical * inPlane(printer);
}

/** Returns the modelled diameter of a hole whose axis is level in print. mm. */
export function levelHole(wanted: number, printer: Printer): number {
  return wanted + printer.holeShrinkHorizontal * inPlane(printer);
}

/** Returns the modelled distance of an outside face from its axis: the print grows by the calibrated amount. mm. */
export function outsideFace(wanted: number, printer: Printer): number {
  return wanted - printer.outerGrowth * inPlane(printer);
}

/** The scale for material shrink comes last, so what is added before it is made smaller by it. */
function inPlane(printer: Printer): number {
  return 1 - printer.materialShrink / 100;
}

/** Returns by how much x and y of the finished outline are multiplied so that the cold print has the drawn size. */
export function shrinkScale(printer: Printer): number {
  return 1 / inPlane(printer);
}
