/** A place in plan, looking down; mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight piece between two places in plan. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** Squares between these hold without loss; beyond them the slower way is taken. */
const SMALL = 1e-200;
const LARGE = 1e200;

/** Returns the distance of two places, mm. */
export function distance(a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  return squared > SMALL && squared < LARGE ? Math.sqrt(squared) : Math.hypot(dx, dy);
}

/** Returns the distance from a place to the nearest place of a segment, mm. Source: plane geometry. */
export function distanceToSegment(point: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return distance(point, from);
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared;
  const held = Math.min(1, Math.max(0, along));
  return distance(point, { x: from.x + held * dx, y: from.y + held * dy });
}

/** Returns whether two segments cross inside both; touching at an end is not crossing. */
export function cross(a: Segment, b: Segment): boolean {
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

/** Returns where the lines of two segments that cross meet, mm. Source: plane geometry. */
export function crossingPlace(a: Segment, b: Segment): Point {
  const [ax, ay] = [a.to.x - a.from.x, a.to.y - a.from.y];
  const [bx, by] = [b.to.x - b.from.x, b.to.y - b.from.y];
  const along = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / (ax * by - ay * bx);
  return { x: a.from.x + along * ax, y: a.from.y + along * ay };
}

/** Returns the distance of two segments, mm; 0 when they cross. */
export function segmentDistance(a: Segment, b: Segment): number {
  if (cross(a, b)) return 0;
  return Math.min(
    distanceToSegment(a.from, b),
    distanceToSegment(a.to, b),
    distanceToSegment(b.from, a),
    distanceToSegment(b.to, a),
  );
}

/** Which side of a segment's line a place lies on: 1 left, -1 right, 0 on it. Signs, since products could underflow. */
function side({ from, to }: Segment, point: Point): number {
  return Math.sign((to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x));
}
