import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { disc, hullOf, opening, type Profile } from "../../geometry/profile.ts";

/** How a round thing may move about the origin: along a line, or any way. mm, degrees. */
export interface Sweep {
  readonly excursion: number;
  /** Direction of the line; undefined when it may move any way. */
  readonly along: number | undefined;
}

/** Returns the two ends of a sweep; one point when it does not move along a line. */
export function sweepEnds({ excursion, along }: Sweep): readonly Vec2[] {
  if (along === undefined || excursion === 0) return [[0, 0]];
  const [x, y] = [excursion * cosDeg(along), excursion * sinDeg(along)];
  return [
    [x, y],
    [-x, -y],
  ];
}

/** Returns the radius at the ends of a sweep: what moves any way needs a larger round instead of a longer one. mm. */
export function sweepRadius(radius: number, { excursion, along }: Sweep): number {
  return along === undefined ? radius + excursion : radius;
}

/** Returns the outline a disc of `radius` covers. A body is drawn inside its circle, an opening around it. */
export function swept(radius: number, sweep: Sweep, fit: "body" | "opening" = "body"): Profile {
  const reach = sweepRadius(radius, sweep);
  const ends = sweepEnds(sweep).map((at) => (fit === "body" ? disc(reach, at) : opening(2 * reach, at)));
  const only = ends[0];
  return ends.length === 1 && only !== undefined ? only : hullOf(...ends);
}
