import { isRefusal, type Refusal } from "../core/calculation.ts";
import type { Point } from "./point.ts";
import { type Probe, planeHeight, type TramPlane, tramPlane } from "./tram-plane.ts";

export interface TramTwist {
  /** How far each mount lies over the plane nearest to the four, in the order they were given, mm. */
  readonly off: readonly number[];
  /** The largest of them, mm: what no tramming takes out. */
  readonly worst: number;
}

/** Probes show a twist when what it bends them by is at least this share of what it would at their farthest. */
const LEAST_SHOWN = 0.02;

/**
 * Returns how far four mounts lie off a plane, by a surface that is straight along both sides of the mounts and may
 * twist (z = a + b u + c v + d u v), put through the probes by least squares.
 *
 * Units: mm. Refuses other than four mounts, fewer than four probes, probes that leave the twist open, what is not a
 * number. On a rectangle each mount is off by (h1 - h2 + h3 - h4)/4. Source: least squares.
 */
export function tramTwist(probes: readonly Probe[], mounts: readonly Point[]): TramTwist | Refusal {
  if (mounts.length !== 4) return { refused: `a twist is that of 4 mounts, and there are ${mounts.length}` };
  if (probes.length < 4) return { refused: `a twist needs 4 probes or more, and there are ${probes.length}` };
  const uneven = warpOver(probes, mounts);
  if (isRefusal(uneven)) return uneven;
  const { heights, warps, warp } = uneven;
  const left = probes.map((probe) => probe.height - planeHeight(heights, probe));
  const shown = probes.map((probe) => warp(probe) - planeHeight(warps, probe));
  const square = shown.reduce((sum, one) => sum + one * one, 0);
  const far = Math.max(...probes.map((probe) => Math.abs(warp(probe))));
  if (!(Math.sqrt(square / probes.length) >= LEAST_SHOWN * far && far > 0))
    return { refused: "the probes leave the twist open: one near each mount is needed" };
  const share = left.reduce((sum, one, index) => sum + one * (shown[index] ?? 0), 0) / square;
  const heightAt = (place: Point) => planeHeight(heights, place) + share * (warp(place) - planeHeight(warps, place));
  const all = mounts.map(({ x, y }) => ({ x, y, height: heightAt({ x, y }) }));
  const best = tramPlane(all);
  if (isRefusal(best)) return { refused: "the mounts stand on a line" };
  return { off: all.map((mount) => mount.height - planeHeight(best, mount)), worst: best.worst };
}

interface Warped {
  /** The planes nearest to the heights, and to the product of the two ways along the sides. */
  readonly heights: TramPlane;
  readonly warps: TramPlane;
  readonly warp: (place: Point) => number;
}

function warpOver(probes: readonly Probe[], mounts: readonly Point[]): Warped | Refusal {
  const heights = tramPlane(probes);
  if (isRefusal(heights)) return heights;
  const [first, second] = roundTheMiddle(mounts);
  if (first === undefined || second === undefined) return { refused: "there are no mounts" };
  const length = Math.hypot(second.x - first.x, second.y - first.y);
  const [ux, uy] = [(second.x - first.x) / length, (second.y - first.y) / length];
  const { x, y } = heights.centre;
  const warp = (place: Point) => {
    const [dx, dy] = [place.x - x, place.y - y];
    return ((dx * ux + dy * uy) * (dy * ux - dx * uy)) / length;
  };
  const warps = tramPlane(probes.map((probe) => ({ x: probe.x, y: probe.y, height: warp(probe) })));
  return isRefusal(warps)
    ? { refused: "two mounts stand in one place, or one is not a number" }
    : { heights, warps, warp };
}

/** Places in the order in which they lie round their middle. */
function roundTheMiddle(places: readonly Point[]): Point[] {
  const mean = (of: (place: Point) => number) => places.reduce((sum, place) => sum + of(place), 0) / places.length;
  const [x, y] = [mean((place) => place.x), mean((place) => place.y)];
  return [...places].sort((a, b) => Math.atan2(a.y - y, a.x - x) - Math.atan2(b.y - y, b.x - x));
}
