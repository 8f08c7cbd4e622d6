import { results } from "../../../core/calculation.ts";
import { TORQUE_FACTOR } from "../../../mechanics/clamp-force.ts";
import { torqueLimit } from "../../../mechanics/torque-limit.ts";
import type { Fittings } from "../fittings.ts";
import { wheelsOf } from "../layout.ts";
import type { Parameters } from "../parameters.ts";
import { type Arms, armsAt, grooves } from "./arms.ts";
import type { Axles } from "./axles.ts";
import { CORNERS } from "./faces.ts";

/** The plate itself, and how hard its bolts may be drawn up. mm, mm3, N·m. */
export interface Plate {
  readonly width: number;
  readonly length: number;
  readonly corner: number;
  readonly holeToEdge: number;
  readonly relief: number;
  readonly reliefLand: number;
  readonly volume: number;
  readonly torqueFixed: number;
  readonly torqueEccentric: number;
  readonly torqueHexagon: number;
  readonly torqueArm: number;
}

/** Largest corner radius of the outline, mm. */
const CORNER = 10;
/** What a land is at least wider than its hole, less 1, so that its ring is no thin wall, mm. */
const LAND = 3;
/** A plate that stands nearer than this to the bearings gets a pocket under each tyre, this deep. mm. */
const RELIEF = { nearer: 2.5, deep: 0.8 };

/** The rule of reliefOf as a formula. */
export const reliefRule = "0.8 * max(0, min(1, ceil(2.5 - min(u_e, L_p) - t_sh - 0.000000001)))";

/** Returns how deep the pockets under the tyres are, 0 for none. mm. */
export function reliefOf(given: Parameters, axles: Pick<Axles, "standoff" | "spacerLength">): number {
  const ring = given.shimmed ? given.shim.values.thickness : 0;
  const gap = Math.min(axles.standoff, axles.spacerLength) + ring;
  return given.wheelRelief ?? (gap < RELIEF.nearer ? RELIEF.deep : 0);
}

export function plateOf(given: Parameters, parts: Fittings, axles: Axles, arms: Arms, relief: number): Plate {
  const width = axles.axisDistance + 2 * given.margin;
  const length = given.rowSpacing + 2 * given.margin;
  const corner = Math.min(CORNER, given.margin);
  const { hexFlats } = parts.eccentric;
  return {
    width,
    length,
    corner,
    holeToEdge: given.margin - Math.max(axles.fixedHole, axles.eccentricHole) / 2,
    relief,
    reliefLand:
      Math.max(given.wheel.values.innerLand, axles.spacerOutside, CORNERS * hexFlats, axles.eccentricHole + LAND) + 1,
    volume: volumeOf(given, axles, arms, (width * length - (4 - Math.PI) * corner ** 2) * axles.thickness),
    ...torques(given, parts, axles, arms),
  };
}

/** Returns the volume at wanted sizes, the pockets of a relief not taken off. mm3. */
function volumeOf(given: Parameters, axles: Axles, arms: Arms, block: number): number {
  const wheels = wheelsOf(given);
  const round = (diameter: number) => (Math.PI / 4) * diameter ** 2;
  const fixed = wheels.filter(({ kind }) => kind === "fixed").length;
  const holes = fixed * round(axles.fixedHole) + (wheels.length - fixed) * round(axles.eccentricHole);
  const { slotWidth, recessWidth, recessDepth, clearance } = arms;
  const deep = axles.thickness - recessDepth;
  const slot = (round(slotWidth) + clearance * slotWidth) * deep;
  const recess = (round(recessWidth) + clearance * recessWidth) * recessDepth;
  return block - holes * axles.thickness - slotCount(given) * (slot + recess);
}

/** Returns how many arm slots a plate has. */
export function slotCount(given: Parameters): number {
  return 2 * armsAt(given).length * grooves(given).length;
}

function torques(given: Parameters, parts: Fittings, axles: Axles, arms: Arms) {
  const pressure = given.material.values.washerPressure;
  const limit = (area: number, diameter: number) =>
    results(torqueLimit, { pressure, area: Math.max(area, 1e-6), factor: TORQUE_FACTOR, diameter }).torque;
  const ring = (outside: number, hole: number) => (Math.PI / 4) * (outside ** 2 - hole ** 2);
  const { diameter } = parts.thread;
  const { hexFlats } = parts.eccentric;
  const hexagon = (Math.sqrt(3) / 2) * hexFlats ** 2 - (Math.PI / 4) * axles.eccentricHole ** 2;
  return {
    torqueFixed: limit(ring(Math.min(parts.washer.outside, axles.spacerOutside), axles.fixedHole), diameter),
    torqueEccentric: limit(ring(parts.fender.outside, axles.eccentricHole), diameter),
    torqueHexagon: limit(hexagon, diameter),
    torqueArm: limit(ring(parts.armWasher.outside, arms.slotWidth), parts.armThread.diameter),
  };
}
