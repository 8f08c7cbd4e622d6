import { strokes } from "./jscad.ts";
import type { Vec2 } from "./mesh.ts";
import { joined, type Profile, placed, polygon, simplified } from "./profile.ts";
import { ring } from "./segments.ts";

/** Pen width of engraved text in mm: wider than a printed line, so that it survives slicing. */
export const PEN = 0.7;

/** Corners of the pen's nib: rounder would be finer than any nozzle. */
const NIB = 8;

/** How far a letter's outline may stray, mm: no nozzle shows it, and letters are most of a part's facets. */
const STRAY = 0.06;

/** Returns engraved text as a profile, `height` mm tall and centred on the origin, or undefined for blank text. */
export function lettering(text: string, height: number, pen = PEN): Profile | undefined {
  const lines = strokes(text, height - pen);
  const points = lines.flat();
  if (points.length === 0) return undefined;
  const dots = lines.flatMap((line) => line.slice(1).map((point, index) => segment(line[index] ?? point, point, pen)));
  const xs = points.map(([x]) => x);
  const centre: Vec2 = [-(Math.min(...xs) + Math.max(...xs)) / 2, -(height - pen) / 2];
  return placed(simplified(joined(...dots), STRAY), centre);
}

/** Returns how wide the text will be, in mm. */
export function letteringWidth(text: string, height: number, pen = PEN): number {
  const xs = strokes(text, height - pen).flatMap((line) => line.map(([x]) => x));
  return xs.length === 0 ? 0 : Math.max(...xs) - Math.min(...xs) + pen;
}

/** What the nib covers on its way from one point to another: its front half there, its back half here. */
function segment(from: Vec2, to: Vec2, pen: number): Profile {
  const nib = ring(pen / 2, NIB);
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const leftness = nib.map(([x, y]) => y * dx - x * dy);
  const leftmost = leftness.indexOf(Math.max(...leftness));
  const rightmost = leftness.indexOf(Math.min(...leftness));
  return polygon(
    nib.flatMap(([x, y], corner) => {
      const [here, there]: [Vec2, Vec2] = [
        [from[0] + x, from[1] + y],
        [to[0] + x, to[1] + y],
      ];
      if (corner === leftmost) return [there, here];
      if (corner === rightmost) return [here, there];
      return x * dx + y * dy > 0 ? [there] : [here];
    }),
  );
}
