import type { Vec2 } from "../../geometry/mesh.ts";

/** Arithmetic in plan: distances between stretches and outlines, and areas. All lengths in mm. */

/** Returns the distance from a point to the stretch a to b. */
export function pointToStretch([px, py]: Vec2, [ax, ay]: Vec2, [bx, by]: Vec2): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / square)) : 0;
  return Math.hypot(px - ax - along * dx, py - ay - along * dy);
}

/** Returns the distance from a stretch to a convex outline (counter-clockwise); 0 when they meet. */
export function stretchToOutline(a: Vec2, b: Vec2, outline: readonly Vec2[]): number {
  if (inside(a, outline) || inside(b, outline)) return 0;
  const edges = outline.map((corner, index): [Vec2, Vec2] => [corner, outline[(index + 1) % outline.length] ?? corner]);
  if (edges.some(([c, d]) => cross(a, b, c, d))) return 0;
  return Math.min(
    ...edges.map(([c, d]) =>
      Math.min(pointToStretch(a, c, d), pointToStretch(b, c, d), pointToStretch(c, a, b), pointToStretch(d, a, b)),
    ),
  );
}

function turn([ax, ay]: Vec2, [bx, by]: Vec2, [cx, cy]: Vec2): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}

function inside(point: Vec2, outline: readonly Vec2[]): boolean {
  return outline.every((corner, index) => turn(corner, outline[(index + 1) % outline.length] ?? corner, point) >= 0);
}

function cross(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

/** Returns the area of an outline; positive when its corners run counter-clockwise. mm2. */
export function outlineArea(outline: readonly Vec2[]): number {
  return outline.reduce((sum, [x, y], index) => {
    const [nx, ny] = outline[(index + 1) % outline.length] ?? [x, y];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

/** Returns the corners of the convex hull of points, counter-clockwise. */
export function convexHull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (ordered: readonly Vec2[]) => {
    const chain: Vec2[] = [];
    for (const point of ordered) {
      while (chain.length > 1 && turn(chain.at(-2) ?? point, chain.at(-1) ?? point, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Returns points on a circle, close enough for an area or a reach. */
export function circlePoints([x, y]: Vec2, radius: number, count = 96): Vec2[] {
  return Array.from({ length: count }, (_, index): Vec2 => {
    const angle = (index * 2 * Math.PI) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}
