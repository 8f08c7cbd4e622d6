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

/** Segments as ax, ay, bx, by of each, one after the other: those with something under them, and those without. */
interface Segments {
  readonly held: number[];
  readonly loose: number[];
}

/** Lines across even the smallest region. */
const LEAST_LINES = 12;

/**
 * Returns what lines at `angle` (radians from +x), `line` mm apart or closer, meet in the region. The search for the
 * reach stops once it is beyond `enough`, since another direction is then known to be better. A span that does not come
 * below `below` is not measured to its end, and the reach beside it is Infinity.
 */
export function bridgeLines(
  outline: readonly OutlineEdge[],
  angle: number,
  line: number,
  { enough, below = Infinity }: { readonly enough: number; readonly below?: number },
): BridgeLines {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  // Lines run along u; v numbers them.
  const edges = turned(outline, cos, sin);
  const back = (u: number, v: number): Vec2 => [u * cos - v * sin, u * sin + v * cos];
  let low = Infinity;
  let high = -Infinity;
  for (let at = 1; at < edges.length; at += 2) {
    low = Math.min(low, edges[at] as number);
    high = Math.max(high, edges[at] as number);
  }
  const width = high - low;
  const count = Math.max(LEAST_LINES, Math.ceil(width / line));
  const lines = cutLines(edges, outline, { low, spacing: width / count, count }, below);
  let span = 0;
  let longest = -1;
  for (let at = 0; at < lines.held.length; at += 4) {
    const length = (lines.held[at + 2] as number) - (lines.held[at] as number);
    if (length <= span) continue;
    span = length;
    longest = at;
  }
  const spanAt: Vec2 =
    longest < 0
      ? [0, 0]
      : back(((lines.held[longest] as number) + (lines.held[longest + 2] as number)) / 2, lines.held[longest + 1] ?? 0);
  if (below < Infinity && (span === 0 || span >= below))
    return { span, spanAt, reach: Infinity, reachAt: spanAt, width };
  const far = farthest(withEdges(lines, edges, outline), line, enough);
  return { span, spanAt, reach: far.reach, reachAt: back(far.u, far.v), width };
}

/** Returns ax, ay, bx, by of each edge in the frame of the lines. */
function turned(outline: readonly OutlineEdge[], cos: number, sin: number): Float64Array {
  const edges = new Float64Array(outline.length * 4);
  let at = 0;
  for (const { ax, ay, bx, by } of outline) {
    edges[at] = ax * cos + ay * sin;
    edges[at + 1] = ay * cos - ax * sin;
    edges[at + 2] = bx * cos + by * sin;
    edges[at + 3] = by * cos - bx * sin;
    at += 4;
  }
  return edges;
}

/** Evenly spaced lines across a region: the first one's v is half a spacing above `low`. */
interface Ruling {
  readonly low: number;
  readonly spacing: number;
  readonly count: number;
}

/** Where lines cross an outline: those of line `index` stand from `starts[index]` to `starts[index + 1]`, by u. */
interface Crossings {
  readonly starts: Int32Array;
  readonly us: Float64Array;
  /** 1 where something is under the outline there. */
  readonly helds: Uint8Array;
}

/**
 * Cuts lines at the outline, and keeps the pieces inside it: held ones at both ends, and loose ones. Ends with a held
 * piece that is as long as `below`.
 */
function cutLines(edges: Float64Array, outline: readonly OutlineEdge[], ruling: Ruling, below: number): Segments {
  const { starts, us, helds } = crossingsOf(edges, outline, ruling);
  const lines: Segments = { held: [], loose: [] };
  for (let index = 0; index < ruling.count; index++) {
    const v = ruling.low + (index + 0.5) * ruling.spacing;
    for (let place = starts[index] as number; place + 1 < (starts[index + 1] as number); place += 2) {
      const from = us[place] as number;
      const to = us[place + 1] as number;
      const isHeld = helds[place] === 1 && helds[place + 1] === 1;
      (isHeld ? lines.held : lines.loose).push(from, v, to, v);
      if (isHeld && to - from >= below) return lines;
    }
  }
  return lines;
}

/** The lines that an edge crosses, by their numbers from the first to before the last. */
function crossedBy(edges: Float64Array, edge: number, { low, spacing, count }: Ruling): [number, number] {
  const ay = edges[edge * 4 + 1] as number;
  const by = edges[edge * 4 + 3] as number;
  const first = Math.max(0, Math.ceil((Math.min(ay, by) - low) / spacing - 0.5));
  return [first, Math.min(count, Math.ceil((Math.max(ay, by) - low) / spacing - 0.5))];
}

function crossingsOf(edges: Float64Array, outline: readonly OutlineEdge[], ruling: Ruling): Crossings {
  const starts = new Int32Array(ruling.count + 1);
  for (let edge = 0; edge < outline.length; edge++) {
    const [first, end] = crossedBy(edges, edge, ruling);
    for (let index = first; index < end; index++) starts[index + 1] = (starts[index + 1] as number) + 1;
  }
  for (let index = 0; index < ruling.count; index++)
    starts[index + 1] = (starts[index + 1] as number) + (starts[index] as number);
  const us = new Float64Array(starts[ruling.count] as number);
  const helds = new Uint8Array(us.length);
  const ends = starts.slice();
  for (let edge = 0; edge < outline.length; edge++) {
    const ax = edges[edge * 4] as number;
    const ay = edges[edge * 4 + 1] as number;
    const run = (edges[edge * 4 + 2] as number) - ax;
    const rise = (edges[edge * 4 + 3] as number) - ay;
    const held = outline[edge]?.held === true ? 1 : 0;
    const [first, end] = crossedBy(edges, edge, ruling);
    for (let index = first; index < end; index++) {
      const u = ax + (run * (ruling.low + (index + 0.5) * ruling.spacing - ay)) / rise;
      // Put where it belongs among those of its line, which are few.
      let place = ends[index] as number;
      ends[index] = place + 1;
      for (; place > (starts[index] as number) && (us[place - 1] as number) > u; place--) {
        us[place] = us[place - 1] as number;
        helds[place] = helds[place - 1] as number;
      }
      us[place] = u;
      helds[place] = held;
    }
  }
  return { starts, us, helds };
}

/** Returns the edges of the outline and the pieces of the lines together. */
function withEdges(lines: Segments, edges: Float64Array, outline: readonly OutlineEdge[]): Segments {
  const all: Segments = { held: [], loose: [] };
  for (let edge = 0; edge < outline.length; edge++) {
    const into = outline[edge]?.held === true ? all.held : all.loose;
    for (let at = edge * 4; at < edge * 4 + 4; at++) into.push(edges[at] as number);
  }
  return { held: all.held.concat(lines.held), loose: all.loose.concat(lines.loose) };
}

/** The point on the loose pieces and the free outline that lies farthest from held edges and held pieces. */
function farthest({ held, loose }: Segments, step: number, enough: number) {
  let reach = 0;
  let atU = 0;
  let atV = 0;
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
      if (distance <= reach) continue;
      reach = distance;
      atU = u;
      atV = v;
    }
  }
  return { reach, u: atU, v: atV };
}

/** Distance to the nearest segment, or 0 as soon as it is known to be at most `least`. */
function distanceBeyond(least: number, u: number, v: number, segments: readonly number[]): number {
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
