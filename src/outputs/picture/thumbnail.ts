import type { Mesh, Vec2 } from "../../geometry/mesh.ts";
import { blankCanvas, type Canvas, type Colour, halved, type Picture, type Point, paintTriangle } from "./canvas.ts";

/** A mesh and where it stands on the bed, mm. */
export interface Standing {
  readonly mesh: Mesh;
  readonly at: Vec2;
}

/** Pixels of the picture, which is drawn at twice the size; free pixels at its edges. */
const SIZE = 128;
const MARGIN = 8;
const BODY: Colour = [122, 160, 196];

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
  const canvas = blankCanvas(SIZE * 2, SIZE * 2);
  toPixels(
    drawn.map(({ points }) => points),
    SIZE * 2,
  );
  for (const { mesh, points } of drawn) paint(canvas, mesh, points);
  return halved(canvas);
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
function toPixels(all: readonly Float64Array[], size: number): void {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const points of all) {
    for (let at = 0; at < points.length; at += 3) {
      const [x, y] = [points[at] as number, points[at + 1] as number];
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < low) low = y;
      if (y > high) high = y;
    }
  }
  const scale = Math.max(right - left, high - low, 1e-6) / (size - 4 * MARGIN);
  for (const points of all) {
    for (let at = 0; at < points.length; at += 3) {
      points[at] = size / 2 + ((points[at] as number) - (left + right) / 2) / scale;
      points[at + 1] = size / 2 - ((points[at + 1] as number) - (low + high) / 2) / scale;
      points[at + 2] = (points[at + 2] as number) / scale;
    }
  }
}

function paint(canvas: Canvas, { triangles }: Mesh, points: Float64Array): void {
  const corner = (index: number): Point => {
    const at = (triangles[index] as number) * 3;
    return [points[at] as number, points[at + 1] as number, points[at + 2] as number];
  };
  for (let facet = 0; facet < triangles.length; facet += 3) {
    const [a, b, c] = [corner(facet), corner(facet + 1), corner(facet + 2)];
    const facing = normalOf(a, b, c);
    // What looks away from the viewer is hidden: the mesh is closed.
    if (facing[2] > 0) paintTriangle(canvas, [a, b, c], shaded(facing));
  }
}

/** Returns the direction a facet looks to, as the viewer has it: right, up, towards. */
function normalOf(a: Point, b: Point, c: Point): Point {
  const [ux, uy, uz] = [b[0] - a[0], a[1] - b[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], a[1] - c[1], c[2] - a[2]];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.sqrt(x * x + y * y + z * z);
  return length === 0 ? [0, 0, 0] : [x / length, y / length, z / length];
}

/** Light comes from over the viewer's left shoulder. */
function shaded([right, up, towards]: Point): Colour {
  const light = Math.max(0, 0.62 * towards + 0.55 * up - 0.4 * right);
  const share = Math.min(1.15, 0.5 + 0.62 * light);
  return [BODY[0], BODY[1], BODY[2]].map((channel) => Math.min(255, Math.round(channel * share))) as never;
}
