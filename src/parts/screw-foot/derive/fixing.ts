import { isRefusal } from "../../../core/calculation.ts";
import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import { clampForce, TORQUE_FACTOR } from "../../../mechanics/clamp-force.ts";
import { slotBolt } from "../../../mechanics/slot-bolt.ts";
import { torqueLimit } from "../../../mechanics/torque-limit.ts";
import { washerPressure } from "../../../mechanics/washer-pressure.ts";
import { boltTorque, type Printer } from "../../../printing/printer.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { type Posts, postReach } from "./bridge.ts";
import { lobeReach } from "./cap.ts";
import type { Housing } from "./housing.ts";

export interface Fixing {
  readonly besides: number;
  readonly margin: number;
  readonly boltX: number;
  /** From bolt to bolt along one slot, where two stand in a row. */
  readonly boltsApart: number;
  readonly plateHalf: number;
  readonly plateTop: number;
  readonly rows: number;
  /** Heights of the bar's slots, from the top down. */
  readonly rowHeights: readonly number[];
  /** 0 when no stock length fits. */
  readonly boltLength: number;
  readonly counterbore: number;
  readonly torque: number;
  readonly clamp: number;
  readonly washerArea: number;
  readonly torqueAllowed: number;
}

/** Bolts in one slot stand at least this far apart, mm. */
const LEAST_APART = 16;
/** Play between the washers, or the slot nuts, of neighbouring bolts, mm. */
export const HARDWARE_PLAY = 1;
/** The plates already keep washers 2 mm off; a lobe needs only this much less, mm. */
const LOBE_PASSES = 1.5;

/** Returns where the mount bolts stand, how long they are and how hard they may pull. */
export function fixingOf(
  given: Parameters,
  bought: Bought,
  { housing, turningRadius, posts, plate, pocket }: Housing & Posts,
  printer: Printer,
): Fixing {
  const { bar, bolt } = bought;
  const besides = Math.max(
    housing,
    turningRadius + 2,
    ...alongBars(given).map((along) => postReach(posts, along)),
    lobesBeside(given, pocket),
  );
  const margin = Math.max(8, bolt.washerDiameter / 2 + 3);
  const boltX = given.mount === "under" ? besides : besides + 2 + bolt.washerDiameter / 2;
  const rowHeights = rowsOf(bar.height, bar.module);
  return {
    besides,
    margin,
    boltX,
    boltsApart: Math.max(LEAST_APART, Math.max(bolt.washerDiameter, bar.nutLength) + HARDWARE_PLAY),
    plateHalf: boltX + margin,
    plateTop: -bar.module / 2 + bolt.washerDiameter / 2 + 3,
    rows: rowHeights.length,
    rowHeights,
    ...lengthOf(given, bought, plate, printer),
    ...clampOf(bought, printer),
  };
}

/** What the lobes of a cap add: a washer must pass them, and the key to a bolt of a corner. */
function lobesBeside({ cap, mount }: Parameters, pocket: number): number {
  return cap ? lobeReach(pocket, mount === "in-corner" ? 90 : 0) - LOBE_PASSES : 0;
}

/** Directions in which the plates run away from the axis. */
function alongBars({ mount, cornerAngle }: Parameters): Vec2[] {
  const straight: Vec2[] = [
    [1, 0],
    [-1, 0],
  ];
  return mount === "in-corner"
    ? [
        [1, 0],
        [cosDeg(cornerAngle), sinDeg(cornerAngle)],
      ]
    : straight;
}

/** Slots lie half a module from each face and a module apart. */
function rowsOf(height: number, module: number): number[] {
  const rows = Math.max(1, Math.min(12, Math.floor(height / module + 1e-6)));
  return Array.from({ length: rows }, (_, index) => -module / 2 - index * module);
}

function lengthOf({ mount }: Parameters, { bar, bolt, stock }: Bought, plate: number, printer: Printer) {
  const { threadStart, slotDepth } = bar;
  const question = { plate, washer: bolt.washerThickness, diameter: bolt.diameter, threadStart, slotDepth, stock };
  const upright = mount === "on-top" || mount === "under";
  const answer = slotBolt(upright ? { ...question, layer: printer.layer } : question);
  // Below a bar the heads stand on the bed face, where a recess would need support.
  if (isRefusal(answer) || (mount === "under" && answer.counterbore > 0)) return { boltLength: 0, counterbore: 0 };
  return { boltLength: answer.length, counterbore: answer.counterbore };
}

function clampOf({ bolt, material }: Bought, printer: Printer) {
  const { thread, diameter, washerDiameter, hole } = bolt;
  const torque = boltTorque(printer, thread);
  const clamp = clampForce.compute({ torque, factor: TORQUE_FACTOR, diameter });
  const under = washerPressure.compute({ force: 0, washer: washerDiameter, hole });
  const washerArea = isRefusal(under) ? 0 : under.area;
  const pressure = material.washerPressure;
  const limit = torqueLimit.compute({ pressure, area: washerArea, factor: TORQUE_FACTOR, diameter });
  return {
    torque,
    clamp: isRefusal(clamp) ? 0 : clamp.force,
    washerArea,
    torqueAllowed: isRefusal(limit) ? 0 : limit.torque,
  };
}
