import type { Refusal } from "../core/calculation.ts";
import type { Point } from "./point.ts";

export interface Probe extends Point {
  /** Height of the plate there, mm; positive is high. */
  readonly height: number;
}

/** The plane z = atCentre + slopeX (x - centre.x) + slopeY (y - centre.y). */
export interface TramPlane {
  readonly centre: Point;
  readonly atCentre: number;
  readonly slopeX: number;
  readonly slopeY: number;
  /** Largest distance of a probe from the plane, mm: what tramming cannot take out. */
  readonly worst: number;
}

/** Probes are as good as on one line when their spread across it is below this share of the spread along it. */
const LEAST_SPREAD = 0.05;

/**
 * Returns the plane nearest to the probed heights, by least squares.
 *
 * Units: mm. Needs three probes or more; refuses fewer, what is not a number, and probes on a line (spread across below
 * 0.05 of the spread along). Source: least squares.
 */
export function tramPlane(probes: readonly Probe[]): TramPlane | Refusal {
  if (probes.length < 3) return { refused: `a plane needs 3 probes or more, and there are ${probes.length}` };
  const centre = { x: mean(probes, ({ x }) => x), y: mean(probes, ({ y }) => y) };
  const atCentre = mean(probes, ({ height }) => height);
  const off = probes.map(({ x, y, height }) => ({ x: x - centre.x, y: y - centre.y, height: height - atCentre }));
  const xx = mean(off, ({ x }) => x * x);
  const yy = mean(off, ({ y }) => y * y);
  const xy = mean(off, ({ x, y }) => x * y);
  const xz = mean(off, ({ x, height }) => x * height);
  const yz = mean(off, ({ y, height }) => y * height);
  const middle = (xx + yy) / 2;
  const swing = Math.hypot((xx - yy) / 2, xy);
  const spread = Math.sqrt(Math.max(0, middle - swing) / (middle + swing));
  if (!(spread >= LEAST_SPREAD)) return { refused: "the probes lie on a line, or one of them is not a number" };
  const determinant = xx * yy - xy * xy;
  const slopeX = (xz * yy - yz * xy) / determinant;
  const slopeY = (yz * xx - xz * xy) / determinant;
  const plane = { centre, atCentre, slopeX, slopeY };
  const worst = Math.max(...probes.map((probe) => Math.abs(probe.height - planeHeight(plane, probe))));
  return Number.isFinite(worst) ? { ...plane, worst } : { refused: "a probe is not a number that can be held" };
}

function mean(probes: readonly Probe[], of: (probe: Probe) => number): number {
  return probes.reduce((sum, probe) => sum + of(probe), 0) / probes.length;
}

/** Returns the height of the plane at a place, mm. */
export function planeHeight(plane: Omit<TramPlane, "worst">, { x, y }: Point): number {
  return plane.atCentre + plane.slopeX * (x - plane.centre.x) + plane.slopeY * (y - plane.centre.y);
}
