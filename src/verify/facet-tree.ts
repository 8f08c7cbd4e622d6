import type { Mesh } from "../geometry/mesh.ts";
import { boxOf } from "./box-of.ts";

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

const LEAF = 6;
/** Boxes are wider by this much, so that a ray in the plane of a box face is inside it. */
const PAD = 1e-7;

/** Returns the tree of boxes over the facets of a mesh; rooms are cut in half across their longest side. */
export function facetTree(mesh: Mesh): FacetTree {
  const count = mesh.triangles.length / 3;
  const order = new Uint32Array(count);
  for (let facet = 0; facet < count; facet++) order[facet] = facet;
  const boxes = facetBoxes(mesh);
  const first = new Int32Array(Math.max(1, 2 * count));
  const size = new Int32Array(Math.max(1, 2 * count));
  let nodes = 1;
  let depth = 0;
  const { min, max } = boxOf(mesh);
  const todo = [{ node: 0, start: 0, end: count, level: 1, room: [...min, ...max] }];
  for (let task = todo.pop(); task !== undefined; task = todo.pop()) {
    const { node, start, end, level, room } = task;
    depth = Math.max(depth, level);
    first[node] = start;
    size[node] = end - start;
    if (end - start <= LEAF) continue;
    const { middle, lower, upper } = divide(boxes, order, start, end, room);
    first[node] = nodes;
    size[node] = 0;
    todo.push({ node: nodes + 1, start: middle, end, level: level + 1, room: upper });
    todo.push({ node: nodes, start, end: middle, level: level + 1, room: lower });
    nodes += 2;
  }
  return {
    bounds: enclose(nodes, first, size, order, boxes),
    first,
    size,
    order,
    shapes: shapesOf(mesh, order),
    depth,
  };
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

/** The boxes of all nodes. Children stand behind their parent, so the last node is done first. */
function enclose(
  nodes: number,
  first: Int32Array,
  size: Int32Array,
  order: Uint32Array,
  boxes: Float64Array,
): Float64Array {
  const bounds = new Float64Array(nodes * 6);
  for (let node = nodes - 1; node >= 0; node--) {
    const at = node * 6;
    bounds.fill(Infinity, at, at + 3);
    bounds.fill(-Infinity, at + 3, at + 6);
    const start = first[node] as number;
    const facets = size[node] as number;
    if (facets === 0 && nodes > 1) {
      grow(bounds, at, bounds, start * 6);
      grow(bounds, at, bounds, start * 6 + 6);
    }
    for (let place = start; place < start + facets; place++) grow(bounds, at, boxes, (order[place] as number) * 6);
  }
  return bounds;
}

/** Makes the box at one place large enough to hold another. */
function grow(bounds: Float64Array, at: number, boxes: Float64Array, from: number): void {
  for (let axis = 0; axis < 3; axis++) {
    const low = boxes[from + axis] as number;
    const high = boxes[from + 3 + axis] as number;
    if (low < (bounds[at + axis] as number)) bounds[at + axis] = low;
    if (high > (bounds[at + 3 + axis] as number)) bounds[at + 3 + axis] = high;
  }
}

/** Lower x, y, z and upper x, y, z. */
type Room = number[];

/** Halves of a room with nothing in them are cut off at most this often; then what is left lies in one spot. */
const CUTS = 30;

/** Reorders the places from `start` to `end` into two groups, neither empty; the second begins at `middle`. */
function divide(
  boxes: Float64Array,
  order: Uint32Array,
  start: number,
  end: number,
  room: Room,
): { middle: number; lower: Room; upper: Room } {
  let left = room;
  for (let cuts = 0; cuts < CUTS; cuts++) {
    const axis = longestSide(left);
    const cut = ((left[axis] as number) + (left[axis + 3] as number)) / 2;
    const middle = part(boxes, order, start, end, axis, cut);
    const [lower, upper] = [[...left], [...left]];
    lower[axis + 3] = cut;
    upper[axis] = cut;
    if (middle > start && middle < end) return { middle, lower, upper };
    left = middle === start ? upper : lower;
  }
  return { middle: (start + end) >> 1, lower: left, upper: left };
}

function longestSide(room: Room): number {
  let longest = 0;
  let length = -1;
  for (let axis = 0; axis < 3; axis++) {
    const side = (room[axis + 3] as number) - (room[axis] as number);
    if (side <= length) continue;
    longest = axis;
    length = side;
  }
  return longest;
}

/** Brings the facets with their middle below the cut to the front, and returns where the others begin. */
function part(boxes: Float64Array, order: Uint32Array, start: number, end: number, axis: number, cut: number): number {
  let middle = start;
  for (let place = start; place < end; place++) {
    const facet = order[place] as number;
    if ((boxes[facet * 6 + axis] as number) + (boxes[facet * 6 + 3 + axis] as number) >= 2 * cut) continue;
    order[place] = order[middle] as number;
    order[middle++] = facet;
  }
  return middle;
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
