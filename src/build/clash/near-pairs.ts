import type { Box } from "../../geometry/mesh.ts";

/**
 * Returns the pairs of boxes that come within `reach` mm of each other, as places in the list, each pair once and in
 * order: the boxes are swept along x, and only those that overlap there are compared. A negative reach wants them to
 * overlap by as much.
 */
export function nearPairs(boxes: readonly Box[], reach = 0): [number, number][] {
  const order = boxes.map((box, index) => ({ box, index })).sort((a, b) => a.box.min[0] - b.box.min[0]);
  const pairs: [number, number][] = [];
  let open: typeof order = [];
  for (const next of order) {
    open = open.filter(({ box }) => box.max[0] + reach >= next.box.min[0]);
    for (const { box, index } of open) {
      if (apart(box, next.box, 1, reach) || apart(box, next.box, 2, reach)) continue;
      pairs.push(index < next.index ? [index, next.index] : [next.index, index]);
    }
    open.push(next);
  }
  return pairs.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

function apart(a: Box, b: Box, axis: 1 | 2, reach: number): boolean {
  return a.max[axis] + reach < b.min[axis] || b.max[axis] + reach < a.min[axis];
}
