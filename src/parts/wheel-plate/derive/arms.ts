import { isRefusal } from "../../../core/calculation.ts";
import { up } from "../../../core/rounding.ts";
import { leeway } from "../../../mechanics/leeway.ts";
import { slotBolt } from "../../../mechanics/slot-bolt.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { wanted } from "../../../printing/fits.ts";
import type { Printer } from "../../../printing/printer.ts";
import { orElse } from "../../or-else.ts";
import type { Fittings } from "../fittings.ts";
import { rowsOf, wheelsOnPlate } from "../layout.ts";
import type { Parameters } from "../parameters.ts";

/** How an arm is bolted across the plate. mm. */
export interface Arms {
  readonly armBoltX: number;
  readonly armBoltLeast: number;
  readonly armBoltMost: number;
  readonly clearance: number;
  readonly slotWidth: number;
  readonly slotLength: number;
  readonly slotWidthModelled: number;
  readonly recessWidth: number;
  readonly recessLength: number;
  readonly recessDepth: number;
  readonly armFloor: number;
  readonly armBoltLength: number;
  readonly rowToArm: number;
  readonly rowToArmNeed: number;
  readonly farRowToArm: number;
  readonly armTop: number;
  readonly armTopMost: number;
}

/** What stands for "no arm is near": further than any plate is long. mm. */
const NO_ARM = 1000;
/** Least plastic between two pockets, mm. Source: design rule. */
const RIB = 2;

/** Returns the heights of the arms' middles. mm. */
export function armsAt(given: Parameters): readonly number[] {
  if (given.armsAt !== undefined) return given.armsAt;
  const count = wheelsOnPlate(given);
  return count === 4 || count === 8 ? [0] : [-given.rowSpacing / 4, given.rowSpacing / 4];
}

/** Returns the heights of an arm's grooves over its middle: one, or two of a bar twice as high. mm. */
export function grooves({ arm }: Parameters): number[] {
  const { height, module } = arm.values;
  const count = Math.max(1, Math.min(4, Math.round(height / module)));
  return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * module);
}

/** Returns the arm pattern. `armBoltLength` is 0 where no bolt and no counterbore fit; a check says so. */
export function armsOf(
  given: Parameters,
  parts: Fittings,
  axisDistance: number,
  { thickness, relief }: { readonly thickness: number; readonly relief: number },
  printer: Printer,
): Arms {
  const washer = parts.armWasher;
  const { diameter, mediumHole } = parts.armThread;
  const armBoltLeast = given.barWidth / 2 + washer.outside / 2 + 1;
  const armBoltMost = axisDistance / 2 + given.margin - washer.outside / 2 - 3;
  const usual = Math.max(Math.round(axisDistance) / 2, up(armBoltLeast, 0.5));
  const armBoltX = given.armBoltAt ?? usual;
  const spacing = 2 * Math.max(armBoltX, 0.1);
  const straight = spacing * Math.tan((given.leeway * Math.PI) / 180);
  const { clearance } = orElse(leeway, { spacing, angle: given.leeway, diameter }, { clearance: straight });
  const { length, counterbore, floor } = armBolt(given, parts, thickness, printer);
  const recessWidth = wanted(washer.outside, "headRecess");
  const recessLength = recessWidth + clearance;
  return {
    armBoltX,
    armBoltLeast,
    armBoltMost,
    clearance,
    slotWidth: mediumHole,
    slotLength: mediumHole + clearance,
    slotWidthModelled: uprightHole(mediumHole, printer),
    recessWidth,
    recessLength,
    recessDepth: counterbore,
    armFloor: floor,
    armBoltLength: length,
    ...distances(given),
    rowToArmNeed: rowToArmNeed(given, parts, relief > 0 ? recessLength : undefined),
    armTop: Math.max(0, ...armsAt(given).map((at) => Math.abs(at) + outermostGroove(given))),
    armTopMost: given.rowSpacing / 2 + given.margin - washer.outside / 2 - 3,
  };
}

const outermostGroove = ({ arm }: Parameters) => (arm.values.height - arm.values.module) / 2;

function armBolt(given: Parameters, parts: Fittings, plate: number, printer: Printer) {
  const { threadStart, slotDepth } = given.arm.values;
  const { diameter } = parts.armThread;
  const question = { plate, washer: parts.armWasher.thickness, diameter, threadStart, slotDepth };
  const bolt = slotBolt({ ...question, stock: parts.armStock, layer: printer.layer });
  return isRefusal(bolt) ? { length: 0, counterbore: 0, floor: plate } : bolt;
}

/** `recess` is the length of a counterbore that a pocket under a tyre must not open into: a thin rib would break out. */
function rowToArmNeed(given: Parameters, parts: Fittings, recess: number | undefined): number {
  const tyre = given.wheel.values.outside / 2;
  const beside = tyre + parts.armWasher.outside / 2 + 1;
  const pocket = recess === undefined ? 0 : tyre + 1 + recess / 2 + RIB;
  const underBar = (given.arm.values.height + parts.fender.outside) / 2 + 1;
  return Math.max(underBar, outermostGroove(given) + Math.max(beside, pocket));
}

function distances(given: Parameters): Pick<Arms, "rowToArm" | "farRowToArm"> {
  const arms = armsAt(given);
  const nearest = (y: number) => Math.min(NO_ARM, ...arms.map((at) => Math.abs(at - y)));
  const ends = [-given.rowSpacing / 2, given.rowSpacing / 2];
  return {
    rowToArm: Math.min(...rowsOf(given).map(nearest)),
    farRowToArm: arms.length === 0 ? 0 : Math.max(...ends.map(nearest)),
  };
}
