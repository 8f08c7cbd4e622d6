import { isRefusal } from "../../../core/calculation.ts";
import { bearingAxialLimit } from "../../../mechanics/bearing-axial-limit.ts";
import { bearingStaticLoad } from "../../../mechanics/bearing-static-load.ts";
import { cupPointHold } from "../../../mechanics/cup-point-hold.ts";
import { pressFitInterference } from "../../../mechanics/press-fit-interference.ts";
import { screwTilt } from "../../../mechanics/screw-tilt.ts";
import { setScrewHold } from "../../../mechanics/set-screw-hold.ts";
import type { Bought } from "../bought.ts";
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

/** Set screws count in every thrust path; the check looks only where they carry the stage. */
function holdOf({ crashForce }: Parameters, { pulley }: Bought, load: number) {
  const each = cupPointHold.compute({ diameter: Number(pulley.setScrew.replace(/^M/i, "")) });
  const holdEach = isRefusal(each) ? 0 : each.hold;
  const count = Math.round(pulley.setScrewCount);
  const of = (force: number, otherwise: number) =>
    outcomeOf(setScrewHold, "factor", { count, each: holdEach, share: ON_CRESTS, load: force }, otherwise);
  const hold = count * holdEach * ON_CRESTS;
  const idle = hold > 0 ? NO_LOAD : 0;
  return {
    holdEach,
    hold,
    holdFactor: of(load, load > 0 ? 0 : idle),
    crashFactor: of(load + crashForce, load + crashForce > 0 ? 0 : idle),
  };
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
