import type { Box } from "./mesh.ts";
import type { Solid } from "./solid.ts";

/** What two bodies have in common: its volume, mm3, and the box round it. */
export interface Overlap {
  readonly volume: number;
  readonly box: Box;
}

/** A solid and how far it is lifted from where it is drawn, mm. */
export interface Lifted {
  readonly solid: Solid;
  readonly lift: number;
}

/** Questions of pairs of solids. Each solid object is evaluated once, when it is first asked about. */
export interface Assembly {
  /**
   * What two solids share outside the rooms; undefined when they only touch, or by less than 0.001 mm. Where they are
   * `likely` to stand in a room together, that is looked at first: the answer is the same.
   */
  readonly overlap: (first: Lifted, second: Lifted, rooms?: readonly Lifted[], likely?: boolean) => Overlap | undefined;
  /** Distance of two solids, mm; 0 when they touch or overlap, `reach` when they are farther apart than that. */
  readonly gap: (first: Lifted, second: Lifted, reach: number) => number;
  /** Returns the tight box round a solid as it is drawn. */
  readonly box: (solid: Solid) => Box;
}

/** A body of the kernel, as far as it is used here. */
export interface Handle<Own> {
  intersect(other: Own): Own;
  subtract(other: Own): Own;
  translate(x: number, y: number, z: number): Own;
  scale(factors: [number, number, number]): Own;
  volume(): number;
  numTri(): number;
  boundingBox(): Box;
  minGap(other: Own, reach: number): number;
  delete(): void;
}

/**
 * Hardware lies on the part it is compared with, and surfaces that lie in one another are by far the slowest to
 * compare: so it is tried without its outermost skin first, mm.
 */
export const SKIN = 0.001;

/** Returns a hall in which solids stand together; `keep` frees what it is given when the hall is cleared. */
export function assemblyOf<Own extends Handle<Own>>(
  evaluate: (solid: Solid) => Own,
  keep: (handle: Own) => Own,
): Assembly {
  const evaluated = new Map<Solid, Own>();
  const drawn = (solid: Solid): Own => {
    const known = evaluated.get(solid);
    if (known !== undefined) return known;
    const body = evaluate(solid);
    evaluated.set(solid, body);
    return body;
  };
  const raised = ({ solid, lift }: Lifted, from: number): Own =>
    lift === from ? drawn(solid) : keep(drawn(solid).translate(0, 0, lift - from));
  return {
    overlap: (first, second, rooms = [], likely = rooms.length > 0) => {
      const one = drawn(first.solid);
      const other = raised(second, first.lift);
      const touches = () => meetsNowhere(one, other, keep);
      if (!likely && touches()) return undefined;
      const meeting = keep(one.intersect(other));
      const left = rooms.reduce((rest, room) => keep(rest.subtract(raised(room, first.lift))), meeting);
      const volume = left.volume();
      if (volume <= 0 || (likely && touches())) return undefined;
      return { volume, box: risen(left.boundingBox(), first.lift) };
    },
    gap: (first, second, reach) => drawn(first.solid).minGap(raised(second, first.lift), reach),
    box: (solid) => drawn(solid).boundingBox(),
  };
}

/** Whether two bodies share nothing once the simpler of them has lost its outermost skin. */
function meetsNowhere<Own extends Handle<Own>>(one: Own, other: Own, keep: (handle: Own) => Own): boolean {
  const [rich, simple] = one.numTri() < other.numTri() ? [other, one] : [one, other];
  return keep(rich.intersect(within(simple, keep))).volume() === 0;
}

/** Returns the body without its outermost skin, as far as a change of scale in each direction takes it off. */
export function within<Own extends Handle<Own>>(body: Own, keep: (handle: Own) => Own): Own {
  const { min, max } = body.boundingBox();
  const along = (axis: 0 | 1 | 2) => {
    const scale = 1 - (2 * SKIN) / Math.max(max[axis] - min[axis], 4 * SKIN);
    return { scale, shift: ((min[axis] + max[axis]) / 2) * (1 - scale) };
  };
  const [x, y, z] = [along(0), along(1), along(2)];
  return keep(keep(body.scale([x.scale, y.scale, z.scale])).translate(x.shift, y.shift, z.shift));
}

function risen({ min, max }: Box, lift: number): Box {
  return { min: [min[0], min[1], min[2] + lift], max: [max[0], max[1], max[2] + lift] };
}
