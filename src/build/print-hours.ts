import { row } from "../core/table.ts";
import { MATERIALS } from "../printing/materials.ts";
import type { Printer } from "../printing/printer.ts";

/** How fast a line is laid on average, starts, corners and ways between lines included, mm/s. common practice */
const SPEED = 40;

/** What one printed body weighs, and how often it is printed. */
interface Printed {
  readonly count: number;
  /** Estimated mass of one, g. */
  readonly mass: number;
}

/**
 * Returns how long bodies take to print, h: an estimate from their mass, the material's density, and the flow of the
 * printer's line and layer laid at an assumed speed.
 */
export function printHours(bodies: readonly Printed[], material: string, { line, layer }: Printer): number {
  const density = row(MATERIALS, material).values.density;
  const grams = bodies.reduce((sum, { count, mass }) => sum + count * mass, 0);
  const volume = (grams / density) * 1000;
  return volume / (line * layer * SPEED) / 3600;
}
