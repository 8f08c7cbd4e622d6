import { lettering, letteringWidth } from "../../geometry/lettering.ts";
import { placed } from "../../geometry/profile.ts";
import { alongY, moved, prism, type Solid } from "../../geometry/solid.ts";

/** Depth of engraved text, mm. */
export const ENGRAVING_DEPTH = 0.4;
const TALLEST = 6;
const SMALLEST = 3.5;

/** Returns the tallest text height from 3.5 to 6 mm that fits the room, or undefined when none does. */
function fitting(text: string, width: number, height: number): number | undefined {
  for (let tall = Math.min(TALLEST, height); tall >= SMALLEST; tall -= 0.5) {
    if (letteringWidth(text, tall) <= width) return tall;
  }
  return undefined;
}

/** Returns text cut into a front face at y = `face` (material behind it), centred on (x, z); nothing if it cannot fit. */
export function engraveFront(
  text: string,
  [x, z]: readonly [number, number],
  face: number,
  room: readonly [number, number],
): Solid[] {
  const height = fitting(text, room[0], room[1]);
  const profile = height === undefined ? undefined : lettering(text, height);
  // Seen from the front (from greater y) x runs to the left, so the text is drawn for that reader.
  if (profile === undefined) return [];
  const drawn = alongY(profile, -ENGRAVING_DEPTH, 1);
  return [moved({ kind: "placed", of: drawn, placement: [-1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0] }, [x, face, z])];
}

/** Returns text cut into an upper face at z = `face`, centred on (x, y), reading along `angle`; nothing if it cannot fit. */
export function engraveTop(
  text: string,
  [x, y]: readonly [number, number],
  face: number,
  room: readonly [number, number],
  angle = 0,
): Solid[] {
  const height = fitting(text, room[0], room[1]);
  const profile = height === undefined ? undefined : lettering(text, height);
  return profile === undefined ? [] : [prism(placed(profile, [x, y], angle), face - ENGRAVING_DEPTH, face + 1)];
}
