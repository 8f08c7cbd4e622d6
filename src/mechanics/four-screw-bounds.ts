import { isRefusal, type Refusal } from "../core/calculation.ts";
import { loadShare } from "./load-share.ts";
import type { Point } from "./point.ts";

export interface LoadBound {
  readonly least: number;
  readonly most: number;
}

export interface FourScrewBounds {
  /** Bounds of the load on each screw, N, in the order given. */
  readonly bounds: readonly LoadBound[];
  /** Whether the weight lies outside the screws, so that one of them must pull down whatever they do. */
  readonly lifts: boolean;
}

/**
 * Returns the bounds of the load on each of four screws. Four supports share a weight in a way that depends on a twist
 * of hundredths of a millimetre, so there is no single answer; the ends of what is possible without pulling are the
 * cases in which only three carry.
 *
 * Units: mm and N. When no three can carry without pulling, the bounds are over all threes, and `lifts` is true.
 * Refuses other than four screws, and screws of which no three make a sound triangle. Source: statics.
 */
export function fourScrewBounds(screws: readonly Point[], weight: number, centre: Point): FourScrewBounds | Refusal {
  if (screws.length !== 4) return { refused: `four screws are asked for, and these are ${screws.length}` };
  const cases = screws
    .map((_, idle) => sharesWithout(screws, idle, weight, centre))
    .filter((shares) => shares !== undefined);
  if (cases.length === 0) return { refused: "no three of the screws carry the weight: they stand nearly in line" };
  const slack = -1e-9 * weight;
  const pushing = cases.filter((shares) => shares.every((share) => share >= slack));
  const counted = pushing.length > 0 ? pushing : cases;
  const bounds = screws.map((_, index) => {
    const loads = counted.map((shares) => shares[index] as number);
    return { least: Math.min(...loads), most: Math.max(...loads) };
  });
  return { bounds, lifts: pushing.length === 0 };
}

function sharesWithout(screws: readonly Point[], idle: number, weight: number, centre: Point): number[] | undefined {
  const [a, b, c] = screws.filter((_, index) => index !== idle) as [Point, Point, Point];
  const places = { xA: a.x, yA: a.y, xB: b.x, yB: b.y, xC: c.x, yC: c.y };
  const shares = loadShare.compute({ weight, ...centre, ...places });
  if (isRefusal(shares)) return undefined;
  const loads = [shares.onA, shares.onB, shares.onC];
  loads.splice(idle, 0, 0);
  return loads;
}
