import { isRefusal, results } from "../../../core/calculation.ts";
import { boltThreadedLength } from "../../../mechanics/bolt-threaded-length.ts";
import { boltThroughLength } from "../../../mechanics/bolt-through-length.ts";
import { eccentricShift } from "../../../mechanics/eccentric-shift.ts";
import { nextStock } from "../../../mechanics/next-stock.ts";
import { wheelDistance } from "../../../mechanics/wheel-distance.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { layerNearest } from "../../../printing/layers.ts";
import type { Printer } from "../../../printing/printer.ts";
import type { Fittings } from "../fittings.ts";
import { wheelsOf } from "../layout.ts";
import type { Parameters } from "../parameters.ts";
import { CORNERS } from "./faces.ts";

/** What the hole is wider than the body of an eccentric that turns in it, mm. Source: design rule. */
export const TURNING_PLAY = 0.1;

/** Everything along and round the axles. mm. */
export interface Axles {
  readonly axisDistance: number;
  readonly thickness: number;
  readonly standoff: number;
  readonly spacerLength: number;
  readonly spacerOutside: number;
  readonly wheelPlane: number;
  readonly barGap: number;
  readonly fixedHole: number;
  readonly fixedHoleModelled: number;
  readonly eccentricBody: number;
  readonly eccentricHole: number;
  readonly eccentricHoleModelled: number;
  readonly perDegree: number;
  readonly touching: number;
  readonly sandwichGap: number;
  readonly farGap: number;
  readonly gripFixed: number;
  readonly gripEccentric: number;
  readonly neededFixed: number;
  readonly neededEccentric: number;
  readonly boltLength: number;
  readonly pastFixed: number;
  readonly pastEccentric: number;
}

/** Returns the stack of the axles. `boltLength` is 0 when no stock length is long enough; a check says so. */
export function axlesOf(given: Parameters, parts: Fittings, printer: Printer): Axles {
  const { overBearings, innerLand } = given.wheel.values;
  const { diameter, fineHole } = parts.thread;
  const ring = given.shimmed ? given.shim.values.thickness : 0;
  const stand = given.eccentric.values.height;
  const printed = (length: number) => layerNearest(length, printer);
  const standoff = given.eccentricKind === "printed" ? printed(stand) : stand;
  const asked = given.spacerLength ?? standoff;
  const spacerLength = given.spacerKind === "printed" ? printed(asked) : asked;
  const spacerOutside = given.spacerOutside ?? (given.shimmed ? 2 * diameter : innerLand);
  const thickness = printed(given.plate);
  const wheelPlane = standoff + ring + overBearings / 2;
  const { body, hexFlats } = parts.eccentric;
  const eccentricHole = body + TURNING_PLAY;
  const sandwichGap = wheelPlane + overBearings / 2 + ring + spacerLength + parts.fender.thickness;
  return {
    axisDistance: distanceOf(given),
    thickness,
    standoff,
    spacerLength,
    spacerOutside,
    wheelPlane,
    barGap: wheelPlane - given.module / 2,
    fixedHole: fineHole,
    fixedHoleModelled: uprightHole(fineHole, printer),
    eccentricBody: body,
    eccentricHole,
    eccentricHoleModelled: uprightHole(eccentricHole, printer),
    perDegree: results(eccentricShift, { offset: given.eccentric.values.offset, angle: 0 }).perDegree,
    touching: given.shimmed
      ? given.shim.values.outside
      : Math.max(spacerOutside, CORNERS * hexFlats, given.sandwich ? 0 : parts.washer.outside),
    sandwichGap,
    farGap: sandwichGap - (wheelPlane - given.module / 2 + given.barDepth),
    ...boltsOf(given, parts, { ring, thickness, standoff, spacerLength }),
  };
}

/** Returns whether the axis distance is known: measured over the wheels, or from a wheel of known offset. */
export function distanceKnown(given: Parameters): "measured" | "tabled" | "unknown" {
  const { outside, axisToBarFace } = given.wheel.values;
  if (given.overWheels !== undefined) {
    const measured = { over: given.overWheels, diameter: outside, bar: given.barWidth };
    return isRefusal(wheelDistance.compute(measured)) ? "unknown" : "measured";
  }
  const stated = given.wheel.stated;
  // The tabled offset belongs to the tabled diameter.
  if (stated.includes("outside") && !stated.includes("axisToBarFace")) return "unknown";
  return axisToBarFace > 0 ? "tabled" : "unknown";
}

/** Returns a stand-in, the wheels beside the bar, where the distance is not known; a check says so. */
function distanceOf(given: Parameters): number {
  const { outside, axisToBarFace } = given.wheel.values;
  switch (distanceKnown(given)) {
    case "measured":
      return (given.overWheels ?? 0) - outside;
    case "tabled":
      return given.barWidth + 2 * axisToBarFace;
    case "unknown":
      return given.barWidth + outside;
  }
}

/** Returns whether a bolt has its thread where the nut of this grip sits. */
function threadReaches(diameter: number, length: number, grip: number): boolean {
  const bolt = boltThreadedLength.compute({ diameter, length });
  return !isRefusal(bolt) && bolt.shank <= grip + 1e-9;
}

interface Lengths {
  readonly ring: number;
  readonly thickness: number;
  readonly standoff: number;
  readonly spacerLength: number;
}

function boltsOf(given: Parameters, parts: Fittings, { ring, thickness, standoff, spacerLength }: Lengths) {
  const washer = parts.washer.thickness;
  const fender = parts.fender.thickness;
  const wheel = 2 * ring + given.wheel.values.overBearings;
  const far = given.sandwich ? spacerLength + fender + thickness : 0;
  const gripFixed = 2 * washer + thickness + spacerLength + wheel + far;
  const gripEccentric = fender + thickness + standoff + wheel + far + (given.sandwich ? fender : washer);
  const need = (grip: number) =>
    results(boltThroughLength, { grip, nut: parts.nut.height, pitch: parts.thread.pitch }).needed;
  const kinds = new Set(wheelsOf(given).map(({ kind }) => kind));
  const neededFixed = need(gripFixed);
  const neededEccentric = need(gripEccentric);
  const longest = Math.max(kinds.has("fixed") ? neededFixed : 0, kinds.has("eccentric") ? neededEccentric : 0);
  const grip = Math.min(gripFixed, gripEccentric);
  const threaded = parts.stock.filter((length) => threadReaches(parts.thread.diameter, length, grip));
  const boltLength = nextStock(threaded, longest) ?? 0;
  return {
    gripFixed,
    gripEccentric,
    neededFixed,
    neededEccentric,
    boltLength,
    pastFixed: boltLength - gripFixed - parts.nut.height,
    pastEccentric: boltLength - gripEccentric - parts.nut.height,
  };
}
