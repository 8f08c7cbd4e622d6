import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { type Change, FOOT_WAYS } from "./foot-ways.ts";
import { allOf, type Changed, feetOn, together } from "./ways-out.ts";

/** Pairs that are tried at most: each is a whole machine to work out. */
const MOST = 12;
/** Of those in which a foot takes both ways, which seldom do: fewer. */
const MOST_OF_BOTH = 4;

/** What one way asks of a foot, and whether the foot fits with that alone. */
interface Asked {
  readonly change: Change | undefined;
  readonly fits: boolean;
}

type Fits = (changed: Changed, screw: string) => boolean;

/**
 * Returns plans in which feet that cannot be built take two ways out: each foot the one of the two with which it fits,
 * and one that fits with neither takes both. Those with the fewest changes come first, then those of the least trouble.
 * `fits` tells of a plan with one way taken by all feet whether the foot of a screw can be built.
 */
export function pairsOf(plan: Plan, hopeless: readonly Diagnostic[], fits: Fits): Changed[] {
  const ways = Object.values(FOOT_WAYS).map(({ of }) => askedOf(plan, feetOn(plan, hopeless, of), fits));
  const pairs = ways.flatMap((one, at) => ways.flatMap((other, second) => (at === second ? [] : [[one, other]])));
  const changes = pairs.flatMap(([one = [], other = []]) => {
    const each = one.map((asked, foot) => taken(asked, other[foot] as Asked));
    const uses = (way: readonly Asked[]) => way.some(({ change }, foot) => each[foot]?.some((own) => own === change));
    return each.every((own) => own.length > 0) && uses(one) && uses(other) ? [each.flat()] : [];
  });
  const sorted = changes.sort((a, b) => a.length - b.length);
  const different = [...new Map(sorted.map((one) => [one.map(({ set }) => set).join(), one])).values()];
  const single = different.filter((one) => one.length === hopeless.length);
  const both = different.filter((one) => one.length > hopeless.length).slice(0, MOST_OF_BOTH);
  return [...single, ...both].slice(0, MOST).map((one) => allOf(plan, one));
}

/** The first change of each foot with which it fits, else the one that goes farthest. */
function askedOf(plan: Plan, feet: ReturnType<typeof feetOn>, fits: Fits): Asked[] {
  const { plans } = together("", plan, feet);
  return feet.map(({ screw, way: { changes } }) => {
    const at = changes.length === 0 ? -1 : plans.findIndex((one) => fits(one, screw));
    return { change: (at < 0 ? undefined : changes[at]) ?? changes.at(-1), fits: at >= 0 };
  });
}

/** What a foot takes of two ways: nothing where it needs both and has one. */
function taken(one: Asked, other: Asked): Change[] {
  const fitting = [one, other].find(({ fits }) => fits);
  const needed = fitting === undefined ? [one, other] : [fitting];
  const changes = needed.flatMap(({ change }) => change ?? []);
  return changes.length === needed.length ? changes : [];
}
