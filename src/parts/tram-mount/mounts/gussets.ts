import { polygon } from "../../../geometry/profile.ts";
import { alongX, type Solid } from "../../../geometry/solid.ts";
import type { Subject } from "../subject.ts";
import { backHeight, CORNER } from "./mount.ts";

/** Thickness of a gusset, mm. */
const GUSSET = 5;

/**
 * Returns the gussets that stand on the bridge plate at its sides and hold it to the plate against the bar, and the
 * chamfer in the corner between them. They lie above the plate, so nothing overhangs.
 */
export function gussets(subject: Subject): Solid[] {
  const { halfWidth, reach, backPlate } = subject.derived;
  const height = backHeight(subject);
  if (height <= 0) return [];
  const front = backPlate - reach;
  const wedge = (rise: number) =>
    polygon([
      [front - 1, -1],
      [front + rise + 1, -1],
      [front, rise],
      [front - 1, rise],
    ]);
  return [
    alongX(wedge(height), halfWidth - GUSSET, halfWidth),
    alongX(wedge(height), -halfWidth, GUSSET - halfWidth),
    alongX(wedge(Math.min(CORNER, height)), 1 - halfWidth, halfWidth - 1),
  ];
}
