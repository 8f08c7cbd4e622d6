import { isRefusal, type Refusal } from "../../core/calculation.ts";
import { fourScrewBounds } from "../../mechanics/four-screw-bounds.ts";
import { loadShare } from "../../mechanics/load-share.ts";
import type { Point } from "../../mechanics/point.ts";
import { twoScrewShare } from "../../mechanics/two-screw-share.ts";
import type { Fact } from "../fact.ts";

/** A screw or a mount in plan, by its name. mm. */
export interface Support extends Point {
  readonly name: string;
}

/** Load on a support, N: with four supports the bounds of it, else twice the same number. */
export interface Share {
  readonly most: number;
  readonly least: number;
  readonly from?: NonNullable<Fact["from"]>;
}

export type Shares = Readonly<Record<string, Share>>;

/** What of a weight is rounding noise where it is a share of it. */
const NOISE = 1e-9;

/**
 * Returns how one to four supports share a weight, N, without the noise of rounding; more than four, or three nearly in
 * line, are refused.
 */
export function sharesOn(supports: readonly Support[], weight: number, centre: Point): Shares | Refusal {
  const shares = sharedBy(supports, weight, centre);
  if (isRefusal(shares)) return shares;
  const quiet = (load: number) => (Math.abs(load) < NOISE * weight ? 0 : load);
  const each = (share: Share): Share => ({ ...share, most: quiet(share.most), least: quiet(share.least) });
  return Object.fromEntries(Object.entries(shares).map(([name, share]) => [name, each(share)]));
}

function sharedBy(supports: readonly Support[], weight: number, centre: Point): Shares | Refusal {
  const [a, b, c] = supports;
  if (a === undefined) return { refused: "nothing carries the weight" };
  if (b === undefined) return { [a.name]: { most: weight, least: weight } };
  if (c === undefined) return onTwo(a, b, weight, centre);
  return supports.length === 3 ? onThree(a, b, c, weight, centre) : onFour(supports, weight, centre);
}

function onTwo(a: Support, b: Support, weight: number, centre: Point): Shares | Refusal {
  const spacing = Math.hypot(b.x - a.x, b.y - a.y);
  const [ux, uy] = [(b.x - a.x) / spacing, (b.y - a.y) / spacing];
  const [dx, dy] = [centre.x - a.x, centre.y - a.y];
  const inputs = { weight, spacing, along: dx * ux + dy * uy, across: dy * ux - dx * uy };
  const shares = twoScrewShare.compute(inputs);
  if (isRefusal(shares)) return shares;
  const share = (result: "onA" | "onB"): Share => ({
    most: shares[result],
    least: shares[result],
    from: { calculation: twoScrewShare.name, result, inputs },
  });
  return { [a.name]: share("onA"), [b.name]: share("onB") };
}

function onThree(a: Support, b: Support, c: Support, weight: number, centre: Point): Shares | Refusal {
  const places = { xA: a.x, yA: a.y, xB: b.x, yB: b.y, xC: c.x, yC: c.y };
  const inputs = { weight, x: centre.x, y: centre.y, ...places };
  const shares = loadShare.compute(inputs);
  if (isRefusal(shares)) return shares;
  const share = (result: "onA" | "onB" | "onC"): Share => ({
    most: shares[result],
    least: shares[result],
    from: { calculation: loadShare.name, result, inputs },
  });
  return { [a.name]: share("onA"), [b.name]: share("onB"), [c.name]: share("onC") };
}

function onFour(supports: readonly Support[], weight: number, centre: Point): Shares | Refusal {
  const outcome = fourScrewBounds(supports, weight, centre);
  if (isRefusal(outcome)) return outcome;
  return Object.fromEntries(supports.map(({ name }, index) => [name, outcome.bounds[index] ?? { most: 0, least: 0 }]));
}

/** Returns the point of the area between the supports that is nearest to a point: where pushing supports carry it. */
export function nearestCarried(supports: readonly Support[], centre: Point): Point {
  if (supports.length >= 3 && isInside(supports, centre)) return centre;
  const pairs = supports.flatMap((from, index) => supports.slice(index + 1).map((to) => onSegment(from, to, centre)));
  const points: Point[] = pairs.length > 0 ? pairs : [...supports];
  const far = (point: Point) => Math.hypot(point.x - centre.x, point.y - centre.y);
  return points.reduce((best, point) => (far(point) < far(best) ? point : best), points[0] ?? centre);
}

/** Whether any three of the supports have the point between them. */
function isInside(supports: readonly Support[], point: Point): boolean {
  return supports.some((a, i) =>
    supports.some((b, j) => j > i && supports.some((c, k) => k > j && inTriangle(a, b, c, point))),
  );
}

function inTriangle(a: Point, b: Point, c: Point, point: Point): boolean {
  const turn = (p: Point, q: Point) => (q.x - p.x) * (point.y - p.y) - (q.y - p.y) * (point.x - p.x);
  const turns = [turn(a, b), turn(b, c), turn(c, a)];
  const flat = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) < 1e-9;
  return !flat && (turns.every((each) => each >= 0) || turns.every((each) => each <= 0));
}

function onSegment(from: Point, to: Point, point: Point): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? ((point.x - from.x) * dx + (point.y - from.y) * dy) / square : 0;
  const clamped = Math.min(1, Math.max(0, along));
  return { x: from.x + clamped * dx, y: from.y + clamped * dy };
}
