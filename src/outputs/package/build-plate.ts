import type { Mesh, Vec2 } from "../../geometry/mesh.ts";

/** What is to be printed, and how often. */
export interface Printed {
  readonly mesh: Mesh;
  readonly count: number;
}

/** One copy of a mesh on the bed: which one, and how far it is moved from the origin, mm. */
export interface Copy {
  readonly of: number;
  readonly at: Vec2;
}

/** Free space between two copies, and between them and the bed's edges, mm. */
const GAP = 6;

/**
 * Returns where every copy stands: beside each other from the bed's left front corner, row by row, no two touching.
 * What does not fit the bed stands behind it; a slicer spreads it over several prints. `bedWidth` in mm.
 */
export function buildPlate(printed: readonly Printed[], bedWidth: number): Copy[] {
  const copies: Copy[] = [];
  let [left, front, deep] = [GAP, GAP, 0];
  for (const [of, { mesh, count }] of printed.entries()) {
    const [low, high] = boxOf(mesh);
    const [wide, long] = [high[0] - low[0], high[1] - low[1]];
    for (let copy = 0; copy < count; copy++) {
      if (left > GAP && left + wide + GAP > bedWidth) {
        front += deep + GAP;
        [left, deep] = [GAP, 0];
      }
      copies.push({ of, at: [left - low[0], front - low[1]] });
      left += wide + GAP;
      deep = Math.max(deep, long);
    }
  }
  return copies;
}

function boxOf({ positions }: Mesh): [[number, number], [number, number]] {
  const low: [number, number] = [Infinity, Infinity];
  const high: [number, number] = [-Infinity, -Infinity];
  for (let at = 0; at < positions.length; at += 3) {
    for (const axis of [0, 1] as const) {
      const value = positions[at + axis] as number;
      if (value < low[axis]) low[axis] = value;
      if (value > high[axis]) high[axis] = value;
    }
  }
  return [low, high];
}
