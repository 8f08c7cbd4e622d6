import { polygon } from "../../geometry/profile.ts";
import { alongX, hullSolid, type Solid } from "../../geometry/solid.ts";
import { wanted } from "../../printing/fits.ts";

/** How far the rib stands out of the mating face, mm. */
export const KEY_HEIGHT = 1.2;
/** The T-nut's boss needs this much free slot on each side of a bolt. */
const BOLT_ROOM = 8;
/** A shorter piece locates nothing. */
const SHORTEST = 6;
/** Chamfer at the ends, so that the rib finds the slot. */
const LEAD = 1;

interface BarSlot {
  readonly slotOpening: number;
  readonly slotMouth: number;
}

/** Returns where the rib runs: the stretch from..to less the room round each bolt, short pieces left out. mm. */
export function keyStretches(from: number, to: number, bolts: readonly number[]): [number, number][] {
  const stretches: [number, number][] = [];
  let start = from;
  for (const bolt of [...bolts].sort((a, b) => a - b)) {
    if (bolt - BOLT_ROOM - start >= SHORTEST) stretches.push([start, Math.min(to, bolt - BOLT_ROOM)]);
    start = Math.max(start, bolt + BOLT_ROOM);
  }
  if (to - start >= SHORTEST) stretches.push([start, to]);
  return stretches;
}

/**
 * Returns the ribs on the mating face y = `mate` that enter a bar's slot whose centre-line lies at height `row`. They
 * stand out towards smaller y. The lower flank leans 45 degrees so that it prints; a V slot takes both flanks leaning.
 */
export function slotKey(
  bar: BarSlot,
  mate: number,
  row: number,
  stretches: readonly (readonly [number, number])[],
): Solid[] {
  const vee = bar.slotMouth > bar.slotOpening;
  const half = wanted(vee ? bar.slotMouth : bar.slotOpening, "slotKey") / 2;
  const skin = 0.01;
  const upper = vee ? half - KEY_HEIGHT : half;
  // Two thin slices, at the face and at the tip; the hull between them gives flanks and end chamfers at once. The tip's
  // inner corner stays inside the hull: on the flank it would add needles whose slope is rounding.
  const face = polygon([
    [mate, row - half],
    [mate + skin, row - half],
    [mate + skin, row + half],
    [mate, row + half],
  ]);
  const tip = polygon([
    [mate - KEY_HEIGHT, row - half + KEY_HEIGHT],
    [mate - KEY_HEIGHT + skin, row - half + KEY_HEIGHT],
    [mate - KEY_HEIGHT + skin, row + upper],
    [mate - KEY_HEIGHT, row + upper],
  ]);
  return stretches.map(([from, to]) => hullSolid(alongX(face, from, to), alongX(tip, from + LEAD, to - LEAD)));
}
