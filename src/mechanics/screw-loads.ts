import { isRefusal, type Refusal, refuse } from "../core/calculation.ts";
import { brief } from "./bounded.ts";
import { loadShare } from "./load-share.ts";
import { distanceToSegment, type Point } from "./point.ts";

/** A screw in plan, by its name. */
export interface PlacedScrew extends Point {
  readonly name: string;
}

export interface ScrewLoad {
  readonly name: string;
  /** Share of the weight, N; never below zero. */
  readonly load: number;
}

/** Share of the weight below which a pull is rounding. */
const GUARD = 1e-9;

/**
 * Returns the load on each of three screws that push only, N.
 *
 * Units: mm and N. Refuses other than three screws, screws in line, and a centre of mass outside their triangle, where
 * a screw would have to pull the stage down: with a floating nut that corner lifts. Source: statics.
 */
export function screwLoads(
  screws: readonly PlacedScrew[],
  weight: number,
  centre: Point,
): readonly ScrewLoad[] | Refusal {
  if (screws.length !== 3) return { refused: `three screws are asked for, and these are ${screws.length}` };
  const [a, b, c] = screws as readonly [PlacedScrew, PlacedScrew, PlacedScrew];
  const places = { xA: a.x, yA: a.y, xB: b.x, yB: b.y, xC: c.x, yC: c.y };
  const shares = loadShare.compute({ weight, x: centre.x, y: centre.y, ...places });
  if (isRefusal(shares)) return shares;
  const loads = [shares.onA, shares.onB, shares.onC];
  const least = Math.min(...loads);
  const lifted = screws[loads.indexOf(least)] as PlacedScrew;
  if (least < -GUARD * weight) return outside(screws, lifted, least, centre);
  return screws.map(({ name }, index) => ({ name, load: Math.max(0, loads[index] as number) }));
}

function outside(screws: readonly PlacedScrew[], lifted: PlacedScrew, load: number, centre: Point): Refusal {
  const sides = screws.map((from, index) => ({ from, to: screws[(index + 1) % screws.length] as PlacedScrew }));
  const by = brief(Math.min(...sides.map((side) => distanceToSegment(centre, side))));
  const at = `x ${brief(centre.x)}, y ${brief(centre.y)} mm`;
  const pull = `${lifted.name} would pull with ${brief(-load)} N`;
  const names = screws.map(({ name }) => name).join(", ");
  return refuse({
    name: "mass-outside-screws",
    says: `the centre of mass at ${at} lies ${by} mm outside ${names}: ${pull}`,
    found: { value: load, unit: "N" },
    limit: { value: 0, unit: "N" },
    why: "the stage tips over its two loaded screws, and the third corner lifts off its nut",
    set: `the centre of mass at least ${by} mm further in, or a screw further out`,
  });
}
