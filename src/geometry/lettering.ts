import { strokes } from "./jscad.ts";
import type { Vec2 } from "./mesh.ts";
import { hullOf, joined, type Profile, placed, polygon } from "./profile.ts";
import { ring } from "./segments.ts";

/** Pen width of engraved text in mm: wider than a printed line, so that it survives slicing. */
export const PEN = 0.7;

/** Corners of the pen's nib: rounder would be finer than any nozzle, and letters are most of a part's facets. */
const NIB = 8;

/** Returns engraved text as a profile, `height` mm tall and centred on the origin, or undefined for blank text. */
export function lettering(text: string, height: number, pen = PEN): Profile | undefined {
  const lines = strokes(text, height - pen);
  const points = lines.flat();
  if (points.length === 0) return undefined;
  const dots = lines.flatMap((line) => line.slice(1).map((point, index) => segment(line[index] ?? point, point, pen)));
  const xs = points.map(([x]) => x);
  const centre: Vec2 = [-(Math.min(...xs) + Math.max(...xs)) / 2, -(height - pen) / 2];
  return placed(joined(...dots), centre);
}

/** Returns how wide the text will be, in mm. */
export function letteringWidth(text: string, height: number, pen = PEN): number {
  const xs = strokes(text, height - pen).flatMap((line) => line.map(([x]) => x));
  return xs.length === 0 ? 0 : Math.max(...xs) - Math.min(...xs) + pen;
}

function segment(from: Vec2, to: Vec2, pen: number): Profile {
  return hullOf(polygon(ring(pen / 2, NIB, from)), polygon(ring(pen / 2, NIB, to)));
}
