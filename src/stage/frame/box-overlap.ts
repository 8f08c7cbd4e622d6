import type { Vec3 } from "../../geometry/mesh.ts";
import { cornersOf, type PlacedBar } from "./placed-bar.ts";
import { cross, dot, minus, stepped, unit } from "./vector.ts";

/** A convex body as its faces, each a list of corners; in no order of turning. */
type Body = readonly (readonly Vec3[])[];

const GUARD = 1e-9;

/** What two bars share. */
export interface Overlap {
  /** mm3 */
  readonly volume: number;
  readonly corners: readonly Vec3[];
}

/** Returns what two bars share; undefined when their boxes are apart. */
export function overlapOf(one: PlacedBar, other: PlacedBar): Overlap | undefined {
  if (apart(cornersOf(one), cornersOf(other))) return undefined;
  let body = facesOf(one);
  for (const [axis, least, most] of slabsOf(other)) {
    body = cut(body, axis, most);
    body = cut(body, [-axis[0], -axis[1], -axis[2]], -least);
    if (body.length < 4) return undefined;
  }
  return { volume: volumeOf(body), corners: body.flat() };
}

function apart(one: readonly Vec3[], other: readonly Vec3[]): boolean {
  return ([0, 1, 2] as const).some((axis) => {
    const [a, b] = [one.map((corner) => corner[axis]), other.map((corner) => corner[axis])];
    return Math.max(...a) <= Math.min(...b) || Math.max(...b) <= Math.min(...a);
  });
}

function slabsOf({ from, length, along, across, up, wide, high }: PlacedBar): [Vec3, number, number][] {
  const [a, b, c] = [dot(from, along), dot(from, across), dot(from, up)];
  return [
    [along, a, a + length],
    [across, b - wide / 2, b + wide / 2],
    [up, c - high / 2, c + high / 2],
  ];
}

/** Corner numbers of the faces of a box whose corners come as `cornersOf` gives them. */
const FACES = [
  [0, 1, 3, 2],
  [4, 5, 7, 6],
  [0, 1, 5, 4],
  [2, 3, 7, 6],
  [0, 2, 6, 4],
  [1, 3, 7, 5],
];

function facesOf(bar: PlacedBar): Body {
  const corners = cornersOf(bar);
  return FACES.map((face) => face.map((index) => corners[index] as Vec3));
}

/** Keeps what lies below a plane: along `normal` up to `most`. */
function cut(body: Body, normal: Vec3, most: number): Body {
  const over = (corner: Vec3) => dot(corner, normal) - most;
  const kept = body.map((face) => clipped(face, over)).filter((face) => face.length > 2);
  const lid = kept.flat().filter((corner) => Math.abs(over(corner)) <= 1e-7);
  return lid.length > 2 ? [...kept, inOrder(lid, normal)] : kept;
}

function clipped(face: readonly Vec3[], over: (corner: Vec3) => number): Vec3[] {
  return face.flatMap((corner, index) => {
    const next = face[(index + 1) % face.length] as Vec3;
    const [here, there] = [over(corner), over(next)];
    const own = here <= GUARD ? [corner] : [];
    const crosses = (here > GUARD && there < -GUARD) || (here < -GUARD && there > GUARD);
    return crosses ? [...own, stepped(corner, minus(next, corner), here / (here - there))] : own;
  });
}

function inOrder(corners: readonly Vec3[], normal: Vec3): Vec3[] {
  const middle = middleOf(corners);
  const right = unit(cross(normal, Math.abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]));
  const ahead = cross(normal, right);
  const turn = (corner: Vec3) => {
    const way = minus(corner, middle);
    return Math.atan2(dot(way, ahead), dot(way, right));
  };
  return [...corners].sort((a, b) => turn(a) - turn(b));
}

function middleOf(corners: readonly Vec3[]): Vec3 {
  const mean = (axis: 0 | 1 | 2) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  return [mean(0), mean(1), mean(2)];
}

/** Pyramids over the faces from a point inside: a third of face by height. A face met twice counts once. */
function volumeOf(body: Body): number {
  const inside = middleOf(body.flat());
  const seen: Vec3[] = [];
  return body.reduce((sum, face) => {
    const area = areaOf(face);
    const size = Math.hypot(...area);
    if (size < 1e-12) return sum;
    const normal = unit(area);
    const height = dot(minus(face[0] as Vec3, inside), normal);
    const outward: Vec3 = height < 0 ? [-normal[0], -normal[1], -normal[2]] : normal;
    if (seen.some((other) => dot(other, outward) > 1 - 1e-9)) return sum;
    seen.push(outward);
    return sum + (size * Math.abs(height)) / 3;
  }, 0);
}

/** Returns the area of a flat face as a vector across it. mm2 */
function areaOf(face: readonly Vec3[]): Vec3 {
  const first = face[0] as Vec3;
  return face.reduce<Vec3>(
    (sum, corner, index) => {
      const next = face[(index + 1) % face.length] as Vec3;
      const piece = cross(minus(corner, first), minus(next, first));
      return [sum[0] + piece[0] / 2, sum[1] + piece[1] / 2, sum[2] + piece[2] / 2];
    },
    [0, 0, 0],
  );
}
