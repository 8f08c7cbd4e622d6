import type { Refusal } from "../core/calculation.ts";

export interface DrivenScrew {
  readonly name: string;
  readonly lead: number;
  readonly screwTeeth: number;
  readonly motorTeeth: number;
  readonly hand: "right" | "left";
  /** Whether its pulley stands inside its loop. */
  readonly inside: boolean;
}

/**
 * Returns the lift per motor turn that all screws of a stage share, mm.
 *
 * Refuses an empty stage, screws that lift unequally (beyond 1e-9), mixed hands, and pulleys on both sides of the belt,
 * which would turn against each other. Source: kinematics.
 */
export function screwsInStep(screws: readonly DrivenScrew[]): { readonly lift: number } | Refusal {
  const [first, ...others] = screws;
  if (first === undefined) return { refused: "there is no screw" };
  const vague = screws.find((screw) => ![screw.lead, screw.screwTeeth, liftOf(screw)].every((value) => value > 0));
  if (vague !== undefined) return { refused: `lead or teeth of ${vague.name} are not above 0` };
  const lift = liftOf(first);
  for (const screw of others) {
    if (Math.abs(liftOf(screw) - lift) > 1e-9 * lift) {
      const [own, wanted] = inWords(liftOf(screw), lift);
      return { refused: `${screw.name} lifts ${own} mm per motor turn, ${first.name} ${wanted} mm` };
    }
    if (screw.hand !== first.hand) return { refused: `${screw.name} and ${first.name} are not of the same hand` };
    if (screw.inside !== first.inside) {
      return {
        refused: `${screw.name} and ${first.name} stand on different sides of the belt and turn against each other`,
      };
    }
  }
  return Number.isFinite(lift) ? { lift } : { refused: "the lift is too large to hold" };
}

/** Four places, or as many as tell the two apart. */
function inWords(one: number, other: number): [string, string] {
  const written = (places: number): [string, string] =>
    [one, other].map((value) => String(Number(value.toFixed(places)))) as [string, string];
  const short = written(4);
  return short[0] === short[1] ? written(12) : short;
}

function liftOf({ lead, motorTeeth, screwTeeth }: DrivenScrew): number {
  return (lead * motorTeeth) / screwTeeth;
}
