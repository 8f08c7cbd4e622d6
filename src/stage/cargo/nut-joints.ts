import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec3 } from "../../geometry/mesh.ts";
import { above } from "../../parts/check.ts";
import type { Fact, Topic } from "../fact.ts";
import { nearestOf } from "../frame/bar-distance.ts";
import { hundredth } from "../frame/footing.ts";
import { type PlacedBar, placedBars } from "../frame/placed-bar.ts";
import { leadNut, type StandingNut } from "../lead-nut.ts";
import type { Plan } from "../schema/index.ts";
import { atMost, told } from "../worked.ts";

/** From a nut's flange to the bar that carries it: a longer plate between them bends. common practice, mm */
const REACH = { plan: 40, height: 25 };

/**
 * Returns where the nuts are joined to the stage, and what is out of reach: the flange carries the stage, on a plate or
 * an angle from the nearest moving bar. The plan names no part for that; the plate itself floats on its springs.
 */
export function nutJoints(plan: Plan): Topic {
  const bars = placedBars(plan).filter(({ moves }) => moves);
  if (bars.length === 0) return { sections: [], diagnostics: [] };
  const joints = Object.entries(plan.screws).map(([name, screw]) => {
    const nut = leadNut(screw, plan.travel.nut);
    return { name, nut, ...nearestBar(bars, screw.at, nut) };
  });
  return {
    sections: [{ title: "Nuts", facts: joints.flatMap(factsOf), lines: joints.map(lineOf) }],
    diagnostics: joints.flatMap((joint) => outOfReach(plan, joint)),
  };
}

interface Joint {
  readonly name: string;
  readonly nut: StandingNut;
  readonly bar: PlacedBar;
  /** From the flange's rim to the bar seen from above, and from its height to the bar's; 0 where they are beside. mm */
  readonly aside: number;
  readonly height: number;
  /** Height of the bar's nearest face over the flange's own height; below 0 the bar lies lower. mm */
  readonly rise: number;
}

/** A nut without a flange is held by its body. */
function nearestBar(bars: readonly PlacedBar[], [x, y]: readonly [number, number], nut: StandingNut) {
  const rim = (nut.flange > 0 ? nut.flange : nut.body) / 2;
  const low = nut.flange > 0 ? nut.high - nut.flangeThickness : nut.low;
  const reached = bars.map((bar) => {
    const axis = { ...bar, from: [x, y, low] as Vec3, along: [0, 0, 1] as Vec3, length: nut.high - low };
    const line = { ...axis, across: [1, 0, 0] as Vec3, up: [0, 1, 0] as Vec3, wide: 0, high: 0 };
    const { here, there } = nearestOf(line, bar);
    const aside = Math.max(0, Math.hypot(there[0] - here[0], there[1] - here[1]) - rim);
    const rise = there[2] - here[2];
    return { bar, aside, rise, height: Math.abs(rise) };
  });
  const far = ({ aside, height }: (typeof reached)[number]) => aside / REACH.plan + height / REACH.height;
  const [best] = reached.sort((a, b) => far(a) - far(b));
  if (best === undefined) throw new RangeError("a stage that has bars has a nearest one");
  return best;
}

function factsOf({ name, bar, aside, height }: Joint): Fact[] {
  const fact = (key: string, label: string, value: number, limit: number): Fact => ({
    key: `screw.${name}.${key}`,
    label: `screw ${name}: ${label}`,
    value: hundredth(value),
    unit: "mm",
    limit: atMost(limit),
  });
  return [
    fact("nut-aside", `rim of its nut to ${bar.name}, the nearest bar of the stage, in plan`, aside, REACH.plan),
    fact("nut-height", `the same in height; 0 beside the bar`, height, REACH.height),
  ];
}

function lineOf({ name, nut, bar, aside }: Joint): string {
  const what = nut.flange > 0 ? `the flange, ${nut.flange} mm across,` : "the nut";
  const [low, high] = [nut.flange > 0 ? nut.high - nut.flangeThickness : nut.low, nut.high];
  const from = `${hundredth(low)} to ${hundredth(high)} mm over the datum`;
  return `${name}: ${what} lies ${from} and is to be joined to ${bar.name}, ${aside.toFixed(1)} mm beside its rim`;
}

function outOfReach(plan: Plan, { name, bar, aside, height, rise }: Joint): readonly Diagnostic[] {
  const nut = plan.travel.nut + rise;
  const tooHigh = above({
    value: hundredth(height),
    unit: "mm",
    warning: REACH.height,
    says: (limit) => `the nut of ${name} stands ${height.toFixed(1)} mm over or under ${bar.name}, past ${limit} mm`,
    set: `travel.nut: ${hundredth(nut)}, or bars of the stage at the height of the nut`,
  });
  const tooFar = above({
    value: hundredth(aside),
    unit: "mm",
    warning: REACH.plan,
    says: (limit) => `the nut of ${name} lies ${aside.toFixed(1)} mm beside ${bar.name}, past ${limit} mm`,
    set: `a moving bar within ${REACH.plan} mm of ${name}, joined to the others, or at: of ${name} nearer to ${bar.name}`,
  });
  return [
    ...told("nut-out-of-reach-of-stage", ["travel", "nut"], tooHigh),
    ...told("nut-out-of-reach-of-stage", ["screws", name, "at"], tooFar),
  ];
}
