import type { Mesh, Vec2 } from "../../geometry/mesh.ts";
import { type DepthBuffer, depthBuffer, paintFacet } from "./depth-buffer.ts";
import type { Picture } from "./png.ts";

/** A mesh and where it stands on the bed, mm. */
export interface Standing {
  readonly mesh: Mesh;
  readonly at: Vec2;
}

/** Pixels of the picture, and free ones at its edges. */
const SIZE = 128;
const MARGIN = 4;
/** The body in full light, and what lies behind it. */
const BODY = [140, 184, 225] as const;
const PAPER = 255;

/**
 * To the right in the picture, up in it and towards the viewer, who looks from the front left from 30 degrees above.
 * Written down and not worked out: sines differ in the last digit from one machine to another, bytes must not.
 */
const RIGHT = [0.819152, 0.573576, 0] as const;
const UP = [-0.286788, 0.409576, 0.866025] as const;
const TOWARDS = [0.496732, -0.709406, 0.5] as const;

/** Returns a small picture of meshes as they stand on the bed, on white, flatly shaded. */
export function thumbnail(standing: readonly Standing[]): Picture {
  const drawn = standing.map(({ mesh, at }) => ({ mesh, points: seen(mesh, at) }));
  const buffer = depthBuffer(SIZE);
  toPixels(drawn.map(({ points }) => points));
  for (const { mesh, points } of drawn) paint(buffer, mesh, points);
  return { width: SIZE, height: SIZE, pixels: buffer.shades, palette: PALETTE };
}

/** Returns the corners as the viewer has them: to the right, up, towards, mm. */
function seen({ positions }: Mesh, [dx, dy]: Vec2): Float64Array {
  const points = new Float64Array(positions.length);
  for (let at = 0; at < positions.length; at += 3) {
    const x = (positions[at] as number) + dx;
    const y = (positions[at + 1] as number) + dy;
    const z = positions[at + 2] as number;
    points[at] = x * RIGHT[0] + y * RIGHT[1];
    points[at + 1] = x * UP[0] + y * UP[1] + z * UP[2];
    points[at + 2] = x * TOWARDS[0] + y * TOWARDS[1] + z * TOWARDS[2];
  }
  return points;
}

/** Turns mm into pixels, y downwards, so that everything lies in the picture. */
function toPixels(all: readonly Float64Array[]): void {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const points of all) {
    for (let at = 0; at < points.length; at += 3) {
      const x = points[at] as number;
      const y = points[at + 1] as number;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < low) low = y;
      if (y > high) high = y;
    }
  }
  const scale = Math.max(right - left, high - low, 1e-6) / (SIZE - 2 * MARGIN);
  for (const points of all) {
    for (let at = 0; at < points.length; at += 3) {
      points[at] = SIZE / 2 + ((points[at] as number) - (left + right) / 2) / scale;
      points[at + 1] = SIZE / 2 - ((points[at + 1] as number) - (low + high) / 2) / scale;
      points[at + 2] = (points[at + 2] as number) / scale;
    }
  }
}

function paint(buffer: DepthBuffer, { triangles }: Mesh, points: Float64Array): void {
  for (let facet = 0; facet < triangles.length; facet += 3) {
    const a = (triangles[facet] as number) * 3;
    const b = (triangles[facet + 1] as number) * 3;
    const c = (triangles[facet + 2] as number) * 3;
    // Half of them look away: the mesh is closed, so they are hidden. Most others are smaller than a pixel.
    if (!looksHere(points, a, b, c)) continue;
    if (missesMiddles(points, a, b, c) || missesMiddles(points, a + 1, b + 1, c + 1)) continue;
    paintFacet(buffer, points, a, b, c, shadeOf(points, a, b, c));
  }
}

/** Whether no middle of a pixel lies between three coordinates. */
function missesMiddles(points: Float64Array, a: number, b: number, c: number): boolean {
  const one = points[a] as number;
  const two = points[b] as number;
  const three = points[c] as number;
  return Math.ceil(Math.min(one, two, three) - 0.5) > Math.max(one, two, three) - 0.5;
}

function looksHere(points: Float64Array, a: number, b: number, c: number): boolean {
  const x = points[a] as number;
  const y = points[a + 1] as number;
  const across = ((points[b] as number) - x) * (y - (points[c + 1] as number));
  return across > (y - (points[b + 1] as number)) * ((points[c] as number) - x);
}

/** Returns how bright a facet that looks here is, 1 to 255. Light comes from over the viewer's left shoulder. */
function shadeOf(points: Float64Array, a: number, b: number, c: number): number {
  const ux = (points[b] as number) - (points[a] as number);
  const uy = (points[a + 1] as number) - (points[b + 1] as number);
  const uz = (points[b + 2] as number) - (points[a + 2] as number);
  const vx = (points[c] as number) - (points[a] as number);
  const vy = (points[a + 1] as number) - (points[c + 1] as number);
  const vz = (points[c + 2] as number) - (points[a + 2] as number);
  const right = uy * vz - uz * vy;
  const up = uz * vx - ux * vz;
  const towards = ux * vy - uy * vx;
  const light = (0.62 * towards + 0.55 * up - 0.4 * right) / Math.sqrt(right * right + up * up + towards * towards);
  return Math.max(1, Math.min(255, Math.round(255 * (0.44 + 0.56 * Math.max(0, light)))));
}

/** The colour of each shade; the first is that of the paper. */
const PALETTE = new Uint8Array(256 * 3).map((_, at) =>
  at < 3 ? PAPER : ((BODY[at % 3] as number) * Math.floor(at / 3)) / 255,
);
