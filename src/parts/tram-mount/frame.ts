import { STOCK_LENGTHS } from "../../catalogue/bolt-lengths.ts";
import { isRefusal, results } from "../../core/calculation.ts";
import { up } from "../../core/rounding.ts";
import { bracketRootStress } from "../../mechanics/bracket-root-stress.ts";
import { TORQUE_FACTOR } from "../../mechanics/clamp-force.ts";
import { slotBolt } from "../../mechanics/slot-bolt.ts";
import { torqueLimit } from "../../mechanics/torque-limit.ts";
import { washerPressure } from "../../mechanics/washer-pressure.ts";
import { wanted } from "../../printing/fits.ts";
import { boltTorque, type Printer } from "../../printing/printer.ts";
import { orElse } from "../or-else.ts";
import type { Fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";
import type { StackNumbers } from "./stack.ts";

/** Half the distance of the bolts of an on-top mount, play between lug and bar, length of a lug, mm. */
export const ON_TOP_BOLT = 12;
export const LUG_PLAY = 0.1;
export const LUG_LENGTH = 30;
/** Wall of the cup and depth of its lead-in, mm. */
const CUP_WALL = 2.5;

/** The printed body and what holds it to the bar. mm, MPa, N·m. */
export interface FrameNumbers {
  readonly cupWall: number;
  readonly cupInside: number;
  readonly cupRadius: number;
  readonly backPlate: number;
  readonly halfFront: number;
  readonly halfWidth: number;
  readonly reach: number;
  readonly edge: number;
  readonly boltX: number;
  readonly rowHeight: number;
  readonly lever: number;
  readonly rootStress: number;
  readonly mountLength: number;
  readonly counterbore: number;
  readonly torqueUsed: number;
  readonly torqueAllowed: number;
}

/** Returns the outline of the bracket and its mounting bolts. A mountLength of 0 means that no bolt will do. */
export function frameNumbers(given: Parameters, parts: Fittings, body: StackNumbers, printer: Printer): FrameNumbers {
  const { mount, halfTravel } = { mount: parts.mount, halfTravel: body.halfTravel };
  // Half of what the hole grows is added, so that the modelled wall of a coarse nozzle still holds four lines.
  const shrink = (printer.holeShrinkVertical * (1 - printer.materialShrink / 100)) / 2;
  const cupWall = Math.max(CUP_WALL, 4 * printer.line + shrink);
  const cupInside = wanted(Math.max(parts.spring.outside, body.springWasherOutside), "springPocket");
  const cupRadius = cupInside / 2 + cupWall;
  const backPlate = given.backPlate ?? (given.bar.values.module === 30 ? 8 : 6);
  const slides = given.joint === "thumb-wheel" || given.joint === "tapped-plate";
  const slider = slides ? parts.sliderWasher.outside / 2 + halfTravel : 0;
  const halfFront = up(Math.max(15, cupRadius + halfTravel + 2, slides ? slider + 3 : 0), 0.5);
  const halfWidth = halfWidthOf(given, parts, halfFront, backPlate);
  const low = given.joint === "thumb-wheel" ? parts.wheel / 2 + halfTravel + 2 : 0;
  const cup = cupRadius + halfTravel + 2 + (given.mount === "on-top" ? 0 : backPlate);
  const reach = Math.max(up(Math.max(cup, low, slides ? slider + 1 : 0), 0.5), given.reach ?? 0);
  const edge = Math.max(8, up(mount.thread.mediumHole / 2 + 0.75 * mount.thread.diameter, 0.5));
  const lever = given.mount === "on-top" ? reach : reach - backPlate;
  const moment = (given.share + given.push) * lever;
  const root = { moment, width: 2 * halfWidth, height: body.thickness };
  return {
    cupWall,
    cupInside,
    cupRadius,
    backPlate,
    halfFront,
    halfWidth,
    reach,
    edge,
    boltX: boltXOf(given, parts, halfWidth, backPlate),
    rowHeight: edge - body.thickness,
    lever,
    rootStress: orElse(bracketRootStress, root, { stress: 0 }).stress,
    ...mountBoltNumbers(given, parts, body.thickness, backPlate, printer),
  };
}

function halfWidthOf(given: Parameters, parts: Fittings, halfFront: number, backPlate: number): number {
  if (given.mount === "on-top") return Math.max(halfFront, ON_TOP_BOLT + parts.mount.washer.outside / 2 + 3);
  if (given.mount === "end") return Math.max(halfFront, given.bar.values.width / 2 + LUG_PLAY + backPlate);
  return halfFront;
}

/** Where the mount bolts stand, or on the end of a bar where their washers lie. */
function boltXOf(given: Parameters, parts: Fittings, halfWidth: number, backPlate: number): number {
  if (given.mount === "on-top") return ON_TOP_BOLT;
  if (given.mount === "end") return given.bar.values.width / 2 + LUG_PLAY + backPlate;
  return halfWidth + 2 + parts.mount.washer.outside / 2;
}

function mountBoltNumbers(given: Parameters, parts: Fittings, t: number, backPlate: number, printer: Printer) {
  const { bolt, thread, washer } = parts.mount;
  const { threadStart, slotDepth } = given.bar.values;
  const upright = given.mount === "on-top";
  const answer = slotBolt({
    plate: upright ? t : backPlate,
    washer: washer.thickness,
    diameter: thread.diameter,
    threadStart,
    slotDepth,
    stock: STOCK_LENGTHS[bolt]?.lengths ?? [],
    layer: upright ? printer.layer : undefined,
  });
  const none = isRefusal(answer);
  const { area } = results(washerPressure, { force: 0, washer: washer.outside, hole: thread.mediumHole });
  const pressure = given.material.values.washerPressure;
  const limit = { pressure, area, factor: TORQUE_FACTOR, diameter: thread.diameter };
  return {
    mountLength: none ? 0 : answer.length,
    counterbore: none ? 0 : answer.counterbore,
    torqueUsed: boltTorque(printer, bolt),
    torqueAllowed: orElse(torqueLimit, limit, { torque: 0 }).torque,
  };
}
