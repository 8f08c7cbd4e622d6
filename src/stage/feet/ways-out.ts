import type { Diagnostic } from "../../core/diagnostic.ts";
import { footParameters, hundredth } from "../frame/footing.ts";
import type { Stage } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { type Change, FOOT_WAYS, type FootWay, mountedUnder } from "./foot-ways.ts";

/** A changed plan, in the words of a file. */
export interface Changed {
  readonly set: string;
  readonly plan: Plan;
  /** What else is made anew that no family of parts makes. */
  readonly also?: string;
}

/** One way out for all feet that cannot be built. */
export interface Way {
  readonly asks: string;
  /** The plans that would do it, the smallest change first. */
  readonly plans: readonly Changed[];
  /** What follows from the last of them, where that one shows how far to go. */
  readonly further?: (last: Stage) => readonly Changed[];
  /** What the plan cannot know of it. */
  readonly measure?: string;
  /** Why there is nothing to try. */
  readonly skipped?: string;
}

/** Returns whether a diagnostic says of a foot that it cannot be built. */
export const isHopeless = ({ name }: Diagnostic) =>
  name === "belt-plane-below-lowest-seat" || name === "foot-stack-does-not-fit";

/** Returns the name of the screw whose foot cannot be built. */
export const screwOf = ({ path }: Diagnostic) => String(path[1]);

/** Returns the ways out of all feet of a machine that cannot be built, in the order of the least trouble. */
export function waysOut(plan: Plan, hopeless: readonly Diagnostic[]): Way[] {
  const { flipped, rings, bearing, mount, hubless } = FOOT_WAYS;
  const ofFeet = ({ asks, of }: AnyFootWay) => together(asks, plan, feetOn(plan, hopeless, of));
  return [
    ...[flipped, rings, bearing, mount].map(ofFeet),
    shifted(plan, hopeless),
    swapped(plan, hopeless),
    ofFeet(hubless),
    singles(plan),
    underneath(plan),
  ];
}

type AnyFootWay = (typeof FOOT_WAYS)[keyof typeof FOOT_WAYS];

/** Returns what one way asks of each foot that cannot be built. */
export function feetOn(plan: Plan, hopeless: readonly Diagnostic[], of: AnyFootWay["of"]) {
  return hopeless.map((one) => {
    const screw = screwOf(one);
    return { screw, way: of({ plan, screw, typed: footParameters(plan, screw), hopeless: one }) };
  });
}

/** Returns one way taken for all feet at once: the smallest change of each, then the next, as far as each goes. */
export function together(
  asks: string,
  plan: Plan,
  feet: readonly { readonly screw: string; readonly way: FootWay }[],
): Way & { readonly plans: readonly Changed[] } {
  const able = feet.filter(({ way }) => way.changes.length > 0);
  if (able.length === 0) return { asks, plans: [], skipped: whyNot(feet) };
  const steps = Math.max(...able.map(({ way }) => way.changes.length));
  const plans = Array.from({ length: steps }, (_, step) => {
    const changes = able.flatMap(({ way }) => way.changes[step] ?? way.changes.at(-1) ?? []);
    return allOf(plan, changes);
  });
  return { asks, plans };
}

/** Returns the plan with several changes, and them in words. */
export function allOf(plan: Plan, changes: readonly Change[]): Changed {
  return {
    set: changes.map(({ set }) => set).join(" and "),
    plan: changes.reduce((before, { apply }) => apply(before), plan),
  };
}

function whyNot(feet: readonly { readonly screw: string; readonly way: FootWay }[]): string {
  const reasons = new Set(feet.map(({ way }) => way.skipped ?? "not tried"));
  const [only, ...more] = reasons;
  if (more.length === 0) return only ?? "not tried";
  return feet.map(({ screw, way }) => `${screw}: ${way.skipped}`).join("; ");
}

/**
 * Steps by which the motor's plate is moved, mm, and how many more than needed are tried: a printed seat lies on a
 * layer, and a seat at its very limit may warn.
 */
const STEP = 0.1;
const MORE = [0, 1, 2, 5, 10, 20];
const HEIGHTS = { least: -300, most: 500 };
const MOTOR = "another mount of the motor or shims under it";

/** How far the planes would have to move for each foot, upwards positive, mm; undefined where no height is short. */
function shortOf({ found, limit }: Diagnostic): number | undefined {
  return found === undefined || limit === undefined ? undefined : limit.value - found.value;
}

function shifted(plan: Plan, hopeless: readonly Diagnostic[]): Way {
  const asks = "move all belt planes by the shortfall";
  const short = hopeless.flatMap((one) => shortOf(one) ?? []);
  if (short.length < hopeless.length) return { asks, plans: [], skipped: "no height is what it fails on" };
  const [least, most] = [Math.min(...short), Math.max(...short)];
  if (least < 0 && most > 0) return { asks, plans: [], skipped: "one foot needs them higher and another one lower" };
  return { asks, plans: raised(plan, most > 0 ? most : least, "") };
}

/** Plans whose planes are moved so far, and a little more. */
function raised(plan: Plan, by: number, before: string): Changed[] {
  const steps = Math.ceil(Math.abs(by) / STEP - 1e-6);
  return MORE.map((more) => Math.sign(by) * (steps + more) * STEP)
    .map((step) => hundredth(plan.motor.plateTop + step))
    .filter((top) => top >= HEIGHTS.least && top <= HEIGHTS.most)
    .map((plateTop) => {
      const set = `${before}motor.plateTop: ${plateTop}`;
      return { set, plan: { ...plan, motor: { ...plan.motor, plateTop } }, also: MOTOR };
    });
}

/** Each loop of a foot that cannot be built changes places with each other one. */
function swapped(plan: Plan, hopeless: readonly Diagnostic[]): Way {
  const asks = "swap which loop is lower";
  const { pulleys } = plan.motor;
  if (pulleys.length < 2) return { asks, plans: [], skipped: "there is one loop only" };
  const screws = hopeless.map(screwOf);
  const inTrouble = pulleys.map(({ loop }) => screws.some((screw) => plan.loops[loop]?.nodes.includes(screw)));
  const plans = pulleys.flatMap((one, a) =>
    pulleys.flatMap((other, b): Changed[] => {
      if (a >= b || !(inTrouble[a] || inTrouble[b])) return [];
      const exchanged = pulleys.with(a, { ...one, loop: other.loop }).with(b, { ...other, loop: one.loop });
      const set = `loop: ${one.loop} and loop: ${other.loop} exchanged in motor.pulleys`;
      return [{ set, plan: { ...plan, motor: { ...plan.motor, pulleys: exchanged } } }];
    }),
  );
  return plans.length === 0 ? { asks, plans, skipped: "no loop on the motor turns it" } : { asks, plans };
}

function singles(plan: Plan): Way {
  const asks = "two single pulleys on the motor instead of a double one";
  const { pulleys } = plan.motor;
  if (!pulleys.some(({ commonFlange }) => commonFlange)) return { asks, plans: [], skipped: "they are single" };
  const apart = pulleys.map((pulley) => ({ ...pulley, commonFlange: false }));
  const changed = { ...plan, motor: { ...plan.motor, pulleys: apart } };
  return { asks, plans: [{ set: "commonFlange: false in motor.pulleys", plan: changed }] };
}

/**
 * All feet hang under their bars, then the motor's plate moves by what is still missing. The belts do not come under
 * the bars by that, since a hanging foot holds its bearing little below its bar: what no plan can say, the words do.
 */
function underneath(plan: Plan): Way {
  const asks = "move the whole drive under the bars";
  const measure = "measure the room under the bars for feet and motor, which no plan knows";
  const feet = Object.keys(plan.screws).map((screw) => ({ screw, way: mountedUnder(plan, screw) }));
  const standing = feet.filter(({ way, screw }) => way.changes.length === 0 && !hangs(plan, screw));
  if (standing.length > 0) return { asks, plans: [], skipped: `cannot be tried: ${whyNot(standing)}; ${measure}` };
  const way = together(asks, plan, feet);
  const [hung] = way.plans;
  if (hung === undefined) return { asks, plans: [], skipped: "all feet hang there" };
  const further = ({ diagnostics }: Stage) => {
    const short = diagnostics.filter(isHopeless).flatMap((one) => shortOf(one) ?? []);
    const by = short.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
    return by === 0 ? [] : raised(hung.plan, by, `${hung.set} and `);
  };
  return { ...way, further, measure };
}

const hangs = (plan: Plan, screw: string) => footParameters(plan, screw).mount === "under";
