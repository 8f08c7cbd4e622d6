import type { Vec2 } from "../geometry/mesh.ts";
import type { OutlineEdge } from "./overhang-region.ts";

/** What printing a region with parallel lines in one direction asks of the printer, in mm. */
export interface BridgeLines {
  /** The longest line that is held at both of its ends; 0 when there is none. */
  readonly span: number;
  readonly spanAt: Vec2;
  /** How far a line that is not held at both ends strays from held edges and from lines that are; 0 at best. */
  readonly reach: number;
  readonly reachAt: Vec2;
  /** Width of the region across the lines. */
  readonly width: number;
}

interface Piece {
  readonly v: number;
  readonly from: number;
  readonly to: number;
  readonly fromHeld: boolean;
  readonly toHeld: boolean;
}

/** Lines across even the smallest region. */
const LEAST_LINES = 12;

/**
 * Returns what lines at `angle` (radians from +x), `line` mm apart or closer, meet in the region. The search for the
 * reach stops once it is beyond `enough`, since another direction is then known to be better; where the span does not
 * come below `below`, it is not begun, and the reach is Infinity.
 */
export function bridgeLines(
  outline: readonly OutlineEdge[],
  angle: number,
  line: number,
  { enough, below = Infinity }: { readonly enough: number; readonly below?: number },
): BridgeLines {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // Lines run along u; v numbers them.
  const turned = outline.map(({ ax, ay, bx, by, held }) => ({
    ax: ax * cos + ay * sin,
    ay: ay * cos - ax * sin,
    bx: bx * cos + by * sin,
    by: by * cos - bx * sin,
    held,
  }));
  const back = (u: number, v: number): Vec2 => [u * cos - v * sin, u * sin + v * cos];
  const low = turned.reduce((least, { ay, by }) => Math.min(least, ay, by), Infinity);
  const width = turned.reduce((most, { ay, by }) => Math.max(most, ay, by), -Infinity) - low;
  const pieces = cutLines(turned, low, width, Math.max(LEAST_LINES, Math.ceil(width / line)));
  let [span, spanAt]: [number, Vec2] = [0, [0, 0]];
  for (const piece of pieces) {
    if (!isHeld(piece) || piece.to - piece.from <= span) continue;
    span = piece.to - piece.from;
    spanAt = back((piece.from + piece.to) / 2, piece.v);
  }
  if (below < Infinity && (span === 0 || span >= below))
    return { span, spanAt, reach: Infinity, reachAt: spanAt, width };
  const far = farthest(pieces, turned, line, enough);
  return { span, spanAt, reach: far.reach, reachAt: back(...far.at), width };
}

function isHeld(piece: Piece): boolean {
  return piece.fromHeld && piece.toHeld;
}

/** Cuts evenly spaced lines at the outline, and keeps the pieces inside it. */
function cutLines(outline: readonly OutlineEdge[], low: number, width: number, count: number): Piece[] {
  const spacing = width / count;
  const crossings = Array.from({ length: count }, (): { u: number; held: boolean }[] => []);
  for (const { ax, ay, bx, by, held } of outline) {
    const first = Math.max(0, Math.ceil((Math.min(ay, by) - low) / spacing - 0.5));
    const end = Math.min(count, Math.ceil((Math.max(ay, by) - low) / spacing - 0.5));
    for (let index = first; index < end; index++) {
      const v = low + (index + 0.5) * spacing;
      crossings[index]?.push({ u: ax + ((bx - ax) * (v - ay)) / (by - ay), held });
    }
  }
  return crossings.flatMap((marks, index) => {
    marks.sort((one, other) => one.u - other.u);
    const v = low + (index + 0.5) * spacing;
    return marks.flatMap((mark, place) => {
      const following = marks[place + 1];
      if (place % 2 === 1 || following === undefined) return [];
      return [{ v, from: mark.u, to: following.u, fromHeld: mark.held, toHeld: following.held }];
    });
  });
}

/** The point on the loose pieces and the free outline that lies farthest from held edges and held pieces. */
function farthest(pieces: readonly Piece[], outline: readonly OutlineEdge[], step: number, enough: number) {
  const held = segments(outline, pieces, true);
  const loose = segments(outline, pieces, false);
  let [reach, atU, atV] = [0, 0, 0];
  for (let from = 0; from < loose.length && reach <= enough; from += 4) {
    const ax = loose[from] as number;
    const ay = loose[from + 1] as number;
    const du = (loose[from + 2] as number) - ax;
    const dv = (loose[from + 3] as number) - ay;
    const steps = Math.max(1, Math.ceil(Math.hypot(du, dv) / step));
    for (let index = 0; index <= steps; index++) {
      const u = ax + (du * index) / steps;
      const v = ay + (dv * index) / steps;
      const distance = distanceBeyond(reach, u, v, held);
      if (distance > reach) [reach, atU, atV] = [distance, u, v];
    }
  }
  const at: Vec2 = [atU, atV];
  return { reach, at };
}

/** Returns the edges and pieces that are held, or those that are not: ax, ay, bx, by of each. */
function segments(outline: readonly OutlineEdge[], pieces: readonly Piece[], held: boolean): Float64Array {
  const edges = outline.filter((edge) => edge.held === held).flatMap(({ ax, ay, bx, by }) => [ax, ay, bx, by]);
  const lines = pieces.filter((piece) => isHeld(piece) === held).flatMap(({ v, from, to }) => [from, v, to, v]);
  return Float64Array.from([...edges, ...lines]);
}

/** Distance to the nearest segment, or 0 as soon as it is known to be at most `least`. */
function distanceBeyond(least: number, u: number, v: number, segments: Float64Array): number {
  let nearest = Infinity;
  for (let from = 0; from < segments.length; from += 4) {
    const ax = segments[from] as number;
    const ay = segments[from + 1] as number;
    const du = (segments[from + 2] as number) - ax;
    const dv = (segments[from + 3] as number) - ay;
    const length = du * du + dv * dv;
    const part = length === 0 ? 0 : Math.min(1, Math.max(0, ((u - ax) * du + (v - ay) * dv) / length));
    const offU = u - ax - part * du;
    const offV = v - ay - part * dv;
    const squared = offU * offU + offV * offV;
    if (squared < nearest) nearest = squared;
    if (nearest <= least * least) return 0;
  }
  return Math.sqrt(nearest);
}
