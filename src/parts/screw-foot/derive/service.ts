import { isRefusal } from "../../../core/calculation.ts";
import { bearingAxialLimit } from "../../../mechanics/bearing-axial-limit.ts";
import { bearingStaticLoad } from "../../../mechanics/bearing-static-load.ts";
import { cupPointHold } from "../../../mechanics/cup-point-hold.ts";
import { pressFitInterference } from "../../../mechanics/press-fit-interference.ts";
import { screwTilt } from "../../../mechanics/screw-tilt.ts";
import { setScrewHold } from "../../../mechanics/set-screw-hold.ts";
import { type Bought, isSetCollar } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Housing } from "./housing.ts";
import type { Loads } from "./loads.ts";
import { outcomeOf } from "./outcome.ts";
import { overBar, type Stack } from "./stack.ts";

export interface Service {
  readonly bearingThrust: number;
  readonly bearingLoad: number;
  readonly bearingSafety: number;
  readonly axialLimit: number;
  /** Set screws that carry the thrust; 0 where something else does. */
  readonly holdCount: number;
  readonly holdEach: number;
  readonly hold: number;
  readonly holdFactor: number;
  readonly crashFactor: number;
  readonly interference: number;
  readonly tilt: number;
  readonly beltHeight: number;
  readonly tipGap: number;
  /** What lies on the bearing's top: its outside diameter decides which ring it presses on. */
  readonly lowestOutside: number;
}

/** Share of a cup point's hold that is left on the crests of a thread (common practice). */
export const ON_CRESTS = 0.3;
/** Elastic modulus of a steel screw, MPa. */
const STEEL = 205000;
/** A factor without a load to divide by. */
const NO_LOAD = 1000;
/** Bearings that take only a quarter of C0 along the axis: small bores, and the light series by their names. */
const SMALL_BORE = 12;
const LIGHT = /^(68|69)\d\d/;

type Foot = Housing & Stack & Loads;

/** Returns what the bearing, the set screws and the screw itself make of the loads. */
export function serviceOf(parameters: Parameters, bought: Bought, foot: Foot): Service {
  const bearingThrust = parameters.thrust === "tip" ? 0 : foot.thrust;
  const beltHeight = foot.plane - foot.seat - foot.shim - bought.bearing.width / 2;
  const outside = foot.seat + foot.shim - parameters.tipLength;
  return {
    bearingThrust,
    ...bearingOf(parameters, bought, bearingThrust),
    ...holdOf(parameters, bought, foot.thrust),
    interference: outcomeOf(pressFitInterference, "share", { ring: bought.bearing.outside, pocket: foot.pocket }),
    beltHeight,
    tilt: tiltOf(parameters, bought, beltHeight),
    tipGap: overBar(parameters, bought) && parameters.thrust !== "tip" ? outside : parameters.tipRelief,
    lowestOutside: lowestOutside(parameters, bought, foot),
  };
}

function bearingOf({ beltPull, bearing: { key } }: Parameters, { bearing }: Bought, axial: number) {
  const rating = bearing.staticRating;
  const small = bearing.bore <= SMALL_BORE || LIGHT.test(key) ? 1 : 0;
  const load = { radial: beltPull, axial, rating };
  return {
    bearingLoad: outcomeOf(bearingStaticLoad, "equivalent", load, 0),
    bearingSafety: outcomeOf(bearingStaticLoad, "safety", load, NO_LOAD),
    axialLimit: outcomeOf(bearingAxialLimit, "limit", { rating, small }, 0),
  };
}

/** What carries the thrust holds it: the pulley's set screws, or a collar's; where neither does there is none. */
function holdOf({ crashForce, thrust, collar }: Parameters, { pulley, collar: ring }: Bought, load: number) {
  const { thread, count } = holdingScrews(thrust, collar, { pulley, ring });
  const each = cupPointHold.compute({ diameter: Number(thread.replace(/^M/i, "")) });
  const holdEach = count === 0 || isRefusal(each) ? 0 : each.hold;
  const of = (force: number, otherwise: number) =>
    outcomeOf(setScrewHold, "factor", { count, each: holdEach, share: ON_CRESTS, load: force }, otherwise);
  const hold = count * holdEach * ON_CRESTS;
  // Nothing hangs on set screws that carry nothing; those of a size without data hold nothing that could be counted on.
  const idle = hold > 0 || count === 0 ? NO_LOAD : 0;
  const factor = (force: number) => of(force, force > 0 && count > 0 ? 0 : idle);
  return { holdCount: count, holdEach, hold, holdFactor: factor(load), crashFactor: factor(load + crashForce) };
}

function holdingScrews(
  thrust: Parameters["thrust"],
  collar: Parameters["collar"],
  { pulley, ring }: { readonly pulley: Bought["pulley"]; readonly ring: Bought["collar"] },
): { readonly thread: string; readonly count: number } {
  if (thrust === "pulley") return { thread: pulley.setScrew, count: Math.round(pulley.setScrewCount) };
  return { thread: ring.screw, count: thrust === "collar" && isSetCollar(collar) ? 1 : 0 };
}

/** 0 when the distance to the nut is not known, or a bridge holds the screw above the belt as well. */
function tiltOf({ bearingToNut, nutFloat, beltPull, style }: Parameters, { screw }: Bought, height: number): number {
  if (bearingToNut === undefined || style === "bridged") return 0;
  const inputs = { float: nutFloat, span: bearingToNut, pull: beltPull, height: Math.max(0, height) };
  return outcomeOf(screwTilt, "tilt", { ...inputs, modulus: STEEL, root: screw.rootDiameter }, 90);
}

function lowestOutside({ thrust }: Parameters, { washers, collar, pulley }: Bought, { hubPoints }: Stack): number {
  const washer = washers[0];
  if (washer !== undefined) return washer.outside;
  if (thrust === "collar") return collar.outside;
  return hubPoints === "down" && pulley.hubLength > 0 ? pulley.hubDiameter : pulley.flangeDiameter;
}
