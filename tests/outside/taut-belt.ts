import type { LoopNode, Point } from "../../src/mechanics/index.ts";

/** Starting points tried on each circle, and halvings of the bracket that holds the tangent. */
const STARTS = 720;
const HALVINGS = 60;
/** Arcs are drawn as chords of this angle, rad, and spans are looked at in this many places. */
const CHORD = 0.05;
const LOOKS = 400;
/** Verdicts nearer than this, mm, are left open. */
const CLEAR = 0.05;

const TURN = 2 * Math.PI;

export interface TautBelt {
  readonly length: number;
  /** Whether a belt can lie like this: it does not cross itself, every node is on its side, none is run through. */
  readonly sound: boolean;
  /** Whether the verdict hangs on less than a twentieth of a millimetre. */
  readonly close: boolean;
}

interface Ray {
  readonly from: Point;
  readonly along: Point;
}

/** The ray that leaves a circle where the belt runs off it at this angle: counter-clockwise inside, else clockwise. */
function leaving({ x, y, radius, inside }: LoopNode, angle: number): Ray {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const along = inside ? { x: -sin, y: cos } : { x: sin, y: -cos };
  return { from: { x: x + radius * cos, y: y + radius * sin }, along };
}

/** How far the ray passes the place where it would touch the circle on the belt's side, mm. */
function miss({ from, along }: Ray, { x, y, radius, inside }: LoopNode): number {
  return along.x * (y - from.y) - along.y * (x - from.x) - (inside ? radius : -radius);
}

function ahead({ from, along }: Ray, { x, y }: Point): boolean {
  return along.x * (x - from.x) + along.y * (y - from.y) > 0;
}

/** Searches the angle at which the belt leaves one circle so that it touches the next; undefined when there is none. */
function search(node: LoopNode, next: LoopNode): { leave: number; from: Point; to: Point } | undefined {
  for (let start = 0; start < STARTS; start++) {
    let [low, high] = [(TURN * start) / STARTS, (TURN * (start + 1)) / STARTS];
    const [first, last] = [leaving(node, low), leaving(node, high)];
    const sign = Math.sign(miss(first, next));
    if (sign === Math.sign(miss(last, next)) || !ahead(first, next)) continue;
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (low + high) / 2;
      if (Math.sign(miss(leaving(node, middle), next)) === sign) low = middle;
      else high = middle;
    }
    const ray = leaving(node, low);
    const out = next.inside ? next.radius : -next.radius;
    return { leave: low, from: ray.from, to: { x: next.x + out * ray.along.y, y: next.y - out * ray.along.x } };
  }
  return undefined;
}

/**
 * Lays a taut belt round the nodes by searching each tangent and measuring what it found; then looks at the drawn path
 * whether a belt can lie like that. Undefined where circles are too near for a tangent. Source: plane geometry; no
 * formula of the tangent's direction or length, and no rule about wraps.
 */
export function tautBelt(nodes: readonly LoopNode[]): TautBelt | undefined {
  const spans = nodes.map((node, index) => search(node, nodes[(index + 1) % nodes.length] as LoopNode));
  let length = 0;
  const path: Point[] = [];
  for (const [index, node] of nodes.entries()) {
    const [before, after] = [spans[(index || nodes.length) - 1], spans[index]];
    if (before === undefined || after === undefined) return undefined;
    const land = Math.atan2(before.to.y - node.y, before.to.x - node.x);
    const turned = (((node.inside ? after.leave - land : land - after.leave) % TURN) + TURN) % TURN;
    const wrap = turned > TURN - 1e-7 ? 0 : turned;
    length += node.radius * wrap + Math.hypot(after.to.x - after.from.x, after.to.y - after.from.y);
    const chords = Math.max(1, Math.ceil(wrap / CHORD));
    for (let chord = 0; chord <= chords; chord++) {
      const angle = land + ((node.inside ? wrap : -wrap) * chord) / chords;
      path.push({ x: node.x + node.radius * Math.cos(angle), y: node.y + node.radius * Math.sin(angle) });
    }
  }
  const room = clearance(nodes, spans as { from: Point; to: Point }[]);
  const sides = nodes.every((node) => windings(path, node) === (node.inside ? 1 : 0));
  return { length, sound: room > 0 && sides && !crossesItself(path), close: Math.abs(room) < CLEAR };
}

/** The least room between a span and a circle that is not at its ends, mm; below 0 when it runs through. */
function clearance(nodes: readonly LoopNode[], spans: readonly { from: Point; to: Point }[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [index, { from, to }] of spans.entries()) {
    for (const [other, { x, y, radius }] of nodes.entries()) {
      if (other === index || other === (index + 1) % nodes.length) continue;
      for (let look = 0; look <= LOOKS; look++) {
        const share = look / LOOKS;
        const [px, py] = [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)];
        least = Math.min(least, Math.hypot(px - x, py - y) - radius);
      }
    }
  }
  return least;
}

/** How often the path goes round a place, counter-clockwise: the angles it sweeps, summed. */
function windings(path: readonly Point[], { x, y }: Point): number {
  let swept = 0;
  for (const [index, point] of path.entries()) {
    const next = path[(index + 1) % path.length] as Point;
    const [ax, ay, bx, by] = [point.x - x, point.y - y, next.x - x, next.y - y];
    swept += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return Math.round(swept / TURN);
}

function crossesItself(path: readonly Point[]): boolean {
  const pieces = path.map((point, index) => [point, path[(index + 1) % path.length] as Point] as const);
  const turn = (a: Point, b: Point, c: Point) => Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return pieces.some(([a, b], index) =>
    pieces.some(([c, d], other) => {
      if (other <= index + 1 || (index === 0 && other === pieces.length - 1)) return false;
      return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }),
  );
}
