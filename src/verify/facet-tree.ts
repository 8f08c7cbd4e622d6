import type { Mesh } from "../geometry/mesh.ts";

/** Boxes within boxes over all facets of a mesh; node 0 holds them all. */
export interface FacetTree {
  /** Lower x, y, z and upper x, y, z of each node. */
  readonly bounds: Float64Array;
  /** Of an inner node, the first of its two children, which are neighbours; of a leaf, its first place in `order`. */
  readonly first: Int32Array;
  /** Facets of a leaf; 0 of an inner node. */
  readonly size: Int32Array;
  readonly order: Uint32Array;
  /** First corner and the two edges from it, 9 numbers for each place in `order`. */
  readonly shapes: Float64Array;
  /** How many nodes lie on the longest way down. */
  readonly depth: number;
}

const LEAF = 4;
/** Boxes are wider by this much, so that a ray in the plane of a box face is inside it. */
const PAD = 1e-7;

/** Returns the tree of boxes over the facets of a mesh, cut in half across the longest side of their middles. */
export function facetTree(mesh: Mesh): FacetTree {
  const count = mesh.triangles.length / 3;
  const order = new Uint32Array(count);
  for (let facet = 0; facet < count; facet++) order[facet] = facet;
  const boxes = facetBoxes(mesh);
  const bounds = new Float64Array(Math.max(1, 2 * count) * 6);
  const first = new Int32Array(Math.max(1, 2 * count));
  const size = new Int32Array(Math.max(1, 2 * count));
  let nodes = 1;
  let depth = 0;
  const todo = [{ node: 0, start: 0, end: count, level: 1 }];
  for (let task = todo.pop(); task !== undefined; task = todo.pop()) {
    const { node, start, end, level } = task;
    depth = Math.max(depth, level);
    enclose(bounds, node, boxes, order, start, end);
    first[node] = start;
    size[node] = end - start;
    if (end - start <= LEAF) continue;
    const middle = divide(boxes, order, start, end);
    first[node] = nodes;
    size[node] = 0;
    todo.push({ node: nodes + 1, start: middle, end, level: level + 1 });
    todo.push({ node: nodes, start, end: middle, level: level + 1 });
    nodes += 2;
  }
  return { bounds, first, size, order, shapes: shapesOf(mesh, order), depth };
}

function facetBoxes({ positions, triangles }: Mesh): Float64Array {
  const boxes = new Float64Array(triangles.length * 2);
  for (let facet = 0; facet < triangles.length / 3; facet++) {
    for (let axis = 0; axis < 3; axis++) {
      const a = positions[(triangles[facet * 3] as number) * 3 + axis] as number;
      const b = positions[(triangles[facet * 3 + 1] as number) * 3 + axis] as number;
      const c = positions[(triangles[facet * 3 + 2] as number) * 3 + axis] as number;
      boxes[facet * 6 + axis] = Math.min(a, b, c) - PAD;
      boxes[facet * 6 + 3 + axis] = Math.max(a, b, c) + PAD;
    }
  }
  return boxes;
}

function enclose(
  bounds: Float64Array,
  node: number,
  boxes: Float64Array,
  order: Uint32Array,
  start: number,
  end: number,
) {
  for (let axis = 0; axis < 3; axis++) {
    let low = Infinity;
    let high = -Infinity;
    for (let place = start; place < end; place++) {
      const box = (order[place] as number) * 6;
      low = Math.min(low, boxes[box + axis] as number);
      high = Math.max(high, boxes[box + 3 + axis] as number);
    }
    bounds[node * 6 + axis] = low;
    bounds[node * 6 + 3 + axis] = high;
  }
}

/** Reorders the places from `start` to `end` into two groups, neither empty, and returns where the second begins. */
function divide(boxes: Float64Array, order: Uint32Array, start: number, end: number): number {
  let axis = 0;
  let cut = 0;
  let widest = -1;
  for (let candidate = 0; candidate < 3; candidate++) {
    let low = Infinity;
    let high = -Infinity;
    for (let place = start; place < end; place++) {
      const middle = middleOf(boxes, order[place] as number, candidate);
      low = Math.min(low, middle);
      high = Math.max(high, middle);
    }
    if (high - low <= widest) continue;
    axis = candidate;
    cut = (low + high) / 2;
    widest = high - low;
  }
  let middle = start;
  for (let place = start; place < end; place++) {
    const facet = order[place] as number;
    if (middleOf(boxes, facet, axis) >= cut) continue;
    order[place] = order[middle] as number;
    order[middle++] = facet;
  }
  // All middles in one spot: any halves will do.
  return middle === start || middle === end ? (start + end) >> 1 : middle;
}

function middleOf(boxes: Float64Array, facet: number, axis: number): number {
  return ((boxes[facet * 6 + axis] as number) + (boxes[facet * 6 + 3 + axis] as number)) / 2;
}

function shapesOf({ positions, triangles }: Mesh, order: Uint32Array): Float64Array {
  const shapes = new Float64Array(order.length * 9);
  for (let place = 0; place < order.length; place++) {
    const facet = order[place] as number;
    for (let axis = 0; axis < 3; axis++) {
      const corner = positions[(triangles[facet * 3] as number) * 3 + axis] as number;
      shapes[place * 9 + axis] = corner;
      shapes[place * 9 + 3 + axis] = (positions[(triangles[facet * 3 + 1] as number) * 3 + axis] as number) - corner;
      shapes[place * 9 + 6 + axis] = (positions[(triangles[facet * 3 + 2] as number) * 3 + axis] as number) - corner;
    }
  }
  return shapes;
}
