import type { BeltLoop } from "./loop-trace.ts";
import type { Point } from "./point.ts";

/**
 * Returns whether a place off every node lies within the belt.
 *
 * A line to the right of it then crosses the belt an odd number of times. The arcs on the nodes are taken as their
 * chords. Source: plane geometry.
 */
export function encloses({ spans }: BeltLoop, { x, y }: Point): boolean {
  const corners = spans.flatMap(({ from, to }) => [from, to]);
  const crossings = corners.filter((corner, index) => {
    const next = corners[(index + 1) % corners.length] as Point;
    if (corner.y > y === next.y > y) return false;
    return x < corner.x + ((y - corner.y) / (next.y - corner.y)) * (next.x - corner.x);
  });
  return crossings.length % 2 === 1;
}
