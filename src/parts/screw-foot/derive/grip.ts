import { frictionUse } from "../../../mechanics/friction-use.ts";
import { rowTension } from "../../../mechanics/row-tension.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Fixing } from "./fixing.ts";
import type { Housing } from "./housing.ts";
import { BEYOND, outcomeOf } from "./outcome.ts";
import type { Stack } from "./stack.ts";

export interface Grip {
  readonly heel: number;
  readonly heelMoment: number;
  readonly tension: number;
  readonly tensionEach: number;
  /** On a post: what tries to slide the seat of the worst bolt. */
  readonly slide: number;
  readonly gripUse: number;
}

/** Friction of plastic on an aluminium bar (common practice). */
export const FRICTION = 0.2;

type Foot = Housing & Fixing & Stack;

/** Returns what tries to lift the foot off its bar or slide it down a post, and the share of the clamp it takes. */
export function gripOf(parameters: Parameters, bought: Bought, foot: Foot, thrust: number): Grip {
  if (parameters.mount === "on-post") return onPost(parameters, bought, foot, thrust);
  const { heel, heelMoment, tension } = pulling(parameters, bought, foot, thrust);
  const tensionEach = tension / 2;
  return {
    heel,
    heelMoment,
    tension,
    tensionEach,
    slide: 0,
    gripUse: foot.clamp > 0 ? tensionEach / foot.clamp : BEYOND,
  };
}

function pulling(parameters: Parameters, { bar }: Bought, foot: Foot, thrust: number) {
  const { mount, beltPull, offset } = parameters;
  const { plane } = foot;
  const axis = Math.max(foot.axis, foot.axisB);
  const half = bar.width / 2;
  if (mount === "under") {
    const heelMoment = thrust * (axis + bar.width) + beltPull * Math.abs(plane + bar.height);
    return { heel: -bar.height, heelMoment, tension: heelMoment / half };
  }
  if (mount === "on-top") {
    const heelMoment = thrust * Math.max(0, offset - half) + beltPull * Math.abs(plane);
    return { heel: 0, heelMoment, tension: heelMoment / half };
  }
  const heel = Math.max(foot.bed, -bar.height);
  const heelMoment = thrust * axis + beltPull * Math.abs(plane - heel);
  const arms = foot.rowHeights.map((row) => row - heel);
  const squares = arms.reduce((sum, arm) => sum + arm ** 2, 0);
  const worst = Math.max(...arms);
  const inputs = { moment: heelMoment, distance: worst, squares, bolts: 2 };
  return { heel, heelMoment, tension: outcomeOf(rowTension, "tension", inputs) };
}

function onPost({ beltPull }: Parameters, { bar }: Bought, foot: Foot, thrust: number): Grip {
  const { axis, plane, bed, margin, clamp, boltsApart } = foot;
  const middle = bed + margin + boltsApart / 2;
  const heelMoment = thrust * (axis + bar.module / 2) + beltPull * Math.abs(plane - middle);
  // The belt's pull adds to the moment's on one bolt of each pair; the thrust runs along the slots, where no key holds.
  const direct = { along: thrust, across: beltPull };
  const inputs = { moment: heelMoment, ...direct, friction: FRICTION, clamp, spacing: boltsApart, faces: 2 };
  const [slide, gripUse] = [outcomeOf(frictionUse, "force", inputs), outcomeOf(frictionUse, "use", inputs)];
  return { heel: middle, heelMoment, tension: 0, tensionEach: 0, slide, gripUse };
}
