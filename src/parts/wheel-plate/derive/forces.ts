import { results } from "../../../core/calculation.ts";
import { axleBending } from "../../../mechanics/axle-bending.ts";
import { bearingStaticLoad } from "../../../mechanics/bearing-static-load.ts";
import { rowForce } from "../../../mechanics/row-force.ts";
import { threeWheelForces } from "../../../mechanics/three-wheel-forces.ts";
import { threeWheelPreload } from "../../../mechanics/three-wheel-preload.ts";
import { wheelForces } from "../../../mechanics/wheel-forces.ts";
import { wheelPreload } from "../../../mechanics/wheel-preload.ts";
import { orElse } from "../../or-else.ts";
import type { Fittings } from "../fittings.ts";
import { facesOf, sidesOf, wheelsOnPlate } from "../layout.ts";
import type { Parameters } from "../parameters.ts";
import type { Arms } from "./arms.ts";
import type { Axles } from "./axles.ts";

/** What the load does to wheels, axles and plate. N, N·mm, MPa, mm. */
export interface Forces {
  readonly offset: number;
  readonly momentRadial: number;
  readonly momentAxial: number;
  readonly squares: number;
  readonly rowRadial: number;
  readonly rowAxial: number;
  readonly preloadLeast: number;
  readonly preload: number;
  readonly largest: number;
  readonly smallest: number;
  readonly flank: number;
  readonly bearingLoad: number;
  readonly overhangRatio: number;
  readonly axleArm: number;
  readonly axleCore: number;
  readonly axleStress: number;
  readonly bendLength: number;
  readonly inertia: number;
  readonly bend: number;
}

export function forcesOf(given: Parameters, parts: Fittings, axles: Axles, arms: Arms, relief: number): Forces {
  const rows = rowForces(given, axles);
  const wheels = wheelLoads(given, rows);
  const { pitch, diameter } = parts.thread;
  const beyond = axles.sandwichGap - axles.wheelPlane;
  const axleArm = given.sandwich ? (axles.wheelPlane * beyond) / axles.sandwichGap : axles.wheelPlane;
  const axle = results(axleBending, { force: wheels.largest, arm: axleArm, diameter, pitch });
  const bendLength = Math.max(0, arms.farRowToArm - given.arm.values.height / 2);
  const inertia = ((axles.axisDistance + 2 * given.margin) * (axles.thickness - relief) ** 3) / 12;
  return {
    ...rows,
    ...wheels,
    overhangRatio: given.overhang / given.rowSpacing,
    axleArm,
    axleCore: axle.core,
    axleStress: axle.stress,
    bendLength,
    inertia,
    bend: (rows.rowAxial * bendLength ** 3) / (3 * given.material.values.modulus * inertia),
  };
}

type Rows = Pick<Forces, "offset" | "momentRadial" | "momentAxial" | "squares" | "rowRadial" | "rowAxial">;

function rowForces(given: Parameters, axles: Axles): Rows {
  const offset = given.offset ?? axles.wheelPlane + axles.thickness + given.arm.values.width / 2;
  const momentRadial = given.load * given.overhang;
  const momentAxial = given.load * offset;
  const rows = sidesOf(given).left;
  const squares = rows.reduce((sum, y) => sum + y * y, 0);
  const share = { outermost: given.rowSpacing / 2, squares, faces: facesOf(given) };
  return {
    offset,
    momentRadial,
    momentAxial,
    squares,
    rowRadial: results(rowForce, { moment: momentRadial, ...share }).force,
    rowAxial: results(rowForce, { moment: momentAxial, ...share }).force,
  };
}

/** A preload below the least one has no wheel forces; the same sums stand in, and a check says so. */
function wheelLoads(given: Parameters, { rowRadial: radial, rowAxial: axial }: Rows) {
  const three = wheelsOnPlate(given) === 3;
  const wanted = results(three ? threeWheelPreload : wheelPreload, { radial, axial });
  const preload = given.preload ?? wanted.preload;
  const swing = three ? radial + axial : (radial + axial) / 2;
  const still = three ? preload / 2 : preload;
  const largest = Math.max(three ? preload : 0, still + swing);
  const standIn = { largest, smallest: still - swing, flank: largest * Math.SQRT1_2 };
  const forces = orElse(three ? threeWheelForces : wheelForces, { preload, radial, axial }, standIn);
  const across = Math.max(three ? preload : 0, still + (three ? radial : radial / 2));
  const along = three ? axial : axial / 2;
  // The two bearings of a wheel share the force across; only one of them holds along the axle.
  const bearing = { radial: across / 2, axial: along, rating: given.bearing.values.staticRating };
  const { equivalent } = orElse(bearingStaticLoad, bearing, { equivalent: 0, safety: 0 });
  return { preloadLeast: wanted.least, preload, ...forces, bearingLoad: equivalent };
}
