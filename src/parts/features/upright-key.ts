import { rectangle } from "../../geometry/profile.ts";
import { hullSolid, prism, type Solid } from "../../geometry/solid.ts";
import { wanted } from "../../printing/fits.ts";
import { KEY_HEIGHT } from "./slot-key.ts";

/** Chamfer at the ends, so that the rib finds the slot. */
const LEAD = 1;
const SKIN = 0.01;

/**
 * Returns the ribs on a mating face that looks up, at height `face`, which enter the slot of a bar above; the slot's
 * centre-line lies at y = `row` and runs along x. A V slot takes leaning flanks. mm.
 */
export function uprightKey(
  bar: { readonly slotOpening: number; readonly slotMouth: number },
  face: number,
  row: number,
  stretches: readonly (readonly [number, number])[],
): Solid[] {
  const vee = bar.slotMouth > bar.slotOpening;
  const half = wanted(vee ? bar.slotMouth : bar.slotOpening, "slotKey") / 2;
  const tip = vee ? half - KEY_HEIGHT : half;
  return stretches.map(([from, to]) =>
    hullSolid(
      prism(rectangle(from, row - half, to, row + half), face - SKIN, face),
      prism(rectangle(from + LEAD, row - tip, to - LEAD, row + tip), face + KEY_HEIGHT - SKIN, face + KEY_HEIGHT),
    ),
  );
}
