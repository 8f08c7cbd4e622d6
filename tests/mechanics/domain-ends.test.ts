import { expect, test } from "vitest";
import { type Calculation, results } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";

/** What one calculation gives on the last inputs inside its domain, and which reason it gives on the first beyond. */
type Ends = readonly [name: string, check: () => void];

/** Own arithmetic: each step beyond changes one or two of the inputs, and is refused with its reason word for word. */
function ends<Input extends string, Result extends string>(
  of: Calculation<Input, Result>,
  inside: Readonly<Record<NoInfer<Input>, number>>,
  gives: Partial<Readonly<Record<NoInfer<Result>, number>>>,
  beyond: readonly (readonly [Partial<Readonly<Record<NoInfer<Input>, number>>>, reason: string])[],
): Ends {
  const check = () => {
    const found = results(of, inside);
    for (const [key, wanted] of Object.entries(gives))
      expect(found[key as Result], key).toBeCloseTo(wanted as number, 9);
    for (const [step, reason] of beyond) {
      expect(of.compute({ ...inside, ...step }), reason).toHaveProperty("refused", reason);
    }
  };
  return [of.name, check];
}

const TENTH = "the sag is over a tenth of the length, too large for this formula";
const NO_LOAD = "the bearing carries no load";
const NEAR_BOLTS = "the bolts are nearer together than twice their diameter";
const BELOW_LAYER = "the seat lies below the first layer";
const measured = { pulley: 16, groove: 7, flange: 1, hub: 7, washers: 1, collar: 0, bearing: 7 };

const BEAMS: Ends[] = [
  ends(m.cantileverDeflection, { force: 1.5, at: 10, length: 10, modulus: 10, inertia: 100 }, { sag: 0.5 }, [
    [{ at: 10.5 }, "the load lies beyond the end of the beam"],
    [{ force: 3 }, TENTH],
  ]),
  ends(m.cantileverDeflection, { force: 2.999, at: 10, length: 10, modulus: 10, inertia: 100 }, { sag: 2.999 / 3 }, []),
  ends(m.cantileverUniformLoad, { load: 0.4, length: 10, modulus: 10, inertia: 100 }, { sag: 0.5 }, [
    [{ load: 0.8 }, TENTH],
  ]),
  ends(m.cantileverSlope, { force: 1, at: 1, modulus: 1, inertia: 90 / (5.999 * Math.PI) }, { slope: 5.999 }, [
    [{ inertia: 90 / (6.001 * Math.PI) }, "the slope is over 6 deg, too large for this formula"],
  ]),
  ends(m.simpleBeamDeflection, { force: 24, length: 10, modulus: 5, inertia: 200 }, { sag: 0.5 }, [
    [{ force: 48 }, TENTH],
  ]),
  ends(m.simpleBeamLoadSag, { force: 24, at: 5, length: 10, modulus: 5, inertia: 200 }, { sag: 0.5 }, [
    [{ force: 48 }, TENTH],
    [{ at: 10.001 }, "the load lies beyond the second support"],
  ]),
  ends(m.simpleBeamUniformLoad, { load: 3.84, length: 10, modulus: 5, inertia: 200 }, { sag: 0.5 }, [
    [{ load: 7.68 }, TENTH],
  ]),
  ends(m.plateStripSag, { pressure: 3.2, length: 10, modulus: 10, thickness: 10 }, { sag: 0.5 }, [
    [{ pressure: 6.4 }, TENTH],
  ]),
  ends(m.pinnedBow, { length: 150, growth: 3 }, { bow: Math.sqrt(168.75) }, [
    [{ growth: 3.001 }, "the growth is over a fiftieth of the length, too much for this formula"],
  ]),
];

const MACHINE: Ends[] = [
  ends(m.bearingStaticLoad, { radial: 0, axial: 2, rating: 1000 }, { equivalent: 1, safety: 1000 }, [
    [{ axial: 0 }, NO_LOAD],
  ]),
  ends(m.bedOnLayer, { seat: 4.5, lowest: 4, first: 0.25, layer: 0.25 }, { bed: 4 }, [[{ seat: 4.249 }, BELOW_LAYER]]),
  ends(m.bedOnLayer, { seat: 4.25, lowest: 4, first: 0.25, layer: 0.25 }, { bed: 4 }, []),
  ends(m.seatOnLayer, { seat: 4.25, bed: 4, first: 0.25, layer: 0.25 }, { printed: 4.25, residual: 0, below: 4.25 }, [
    [{ seat: 4.249 }, BELOW_LAYER],
  ]),
  ends(m.beltMisalignment, { difference: -0.15, span: 100, groove: 6.3, belt: 6 }, { allowed: 0.15, use: 1 }, [
    [{ groove: 6.299 }, "the groove is less than 0.3 mm wider than the belt"],
  ]),
  ends(m.beltSeat, { ...measured, plane: 24, pulley: 16.3 }, { offsetDown: 11.8, seatDown: 4.2, seatUp: 11.5 }, [
    [{ pulley: 16.31 }, "H_p is 16.31, and hub, flanges and w_t make 16: measure again"],
    [{ pulley: 15.69 }, "H_p is 15.69, and hub, flanges and w_t make 16: measure again"],
  ]),
  ends(m.carriageTipDrop, { upper: 0.5, lower: 0.54, spacing: 20, length: 100 }, { drop: 5.2 }, [
    [{ lower: 0.5481 }, "the carriage turns by over 3 deg"],
  ]),
  ends(m.cupPointHold, { diameter: 3 }, {}, [[{ diameter: 3.5 }, "no data for set screws M3.5"]]),
  ends(m.driveResolution, { screwTeeth: 40, motorTeeth: 20, lead: 8, stepAngle: 0.9, microsteps: 256 }, { ratio: 2 }, [
    [{ stepAngle: 1.7 }, "phi does not divide a turn into whole steps"],
    [{ microsteps: 48 }, "m is not a power of two"],
  ]),
  ends(m.frameSquareness, { length: 100, width: 99, first: 100, second: 98 }, { angle: 1.8 / Math.PI }, [
    [{ second: 97.9 }, "the diagonals differ by over 2 %: measure again"],
  ]),
  ends(m.growthVector, { plate: 10, plateWarming: 20, frame: 0, frameWarming: 0, x: 0, y: 4 }, { growth: 8e-4 }, [
    [{ y: 0 }, "the mount stands on the fixed mount, so it has no direction"],
  ]),
  ends(m.leewayAngle, { spacing: 20, clearance: 1.048, diameter: 10 }, {}, [
    [{ spacing: 19.999 }, NEAR_BOLTS],
    [{ clearance: 1.0482 }, "the clearance lets the leg turn by over 3 deg"],
  ]),
  ends(m.leeway, { spacing: 20, angle: 0, diameter: 10 }, { clearance: 0 }, [[{ spacing: 19.999 }, NEAR_BOLTS]]),
  ends(m.loopTolerance, { length: 1000 }, { tolerance: 0.5 }, []),
  ends(m.meshEstimate, { teeth: 20, large: 12, small: 12, centres: 12.001 }, { mesh: 10 }, [
    [{ small: 12.001, centres: 100 }, "the smaller pulley is the larger one"],
    [{ centres: 12 }, "the pulleys overlap"],
  ]),
  ends(
    m.twoPulleyLoop,
    { large: 10, small: 10, centres: 20.5 },
    { angle: 0, span: 20.5, smallWrap: 180, length: 41 + 20 * Math.PI, approximate: 41 + 20 * Math.PI },
    [
      [{ small: 10.01 }, "r is above R"],
      [{ centres: 20 }, "the pulleys overlap"],
    ],
  ),
  ends(m.twoPulleyCentres, { large: 10, small: 10, length: 41 + 20 * Math.PI }, { centres: 20.5, approximate: 20.5 }, [
    [{ small: 10.01 }, "r is above R"],
    [{ length: 39.99 + 20 * Math.PI }, "the belt is too short for these pulleys"],
  ]),
  ends(m.pulleyOutside, { teeth: 20, pitch: Math.PI, line: 9.5 }, { pitchDiameter: 20, outside: 1 }, [
    [{ line: 10 }, "the pitch line lies deeper than the pulley"],
  ]),
  ends(
    m.requiredSlide,
    { slack: 1, length: 100, stretch: 1, tolerance: 1, frame: 1, sensitivity: -0.2 },
    { inward: 7, outward: 11, total: 18 },
    [[{ sensitivity: 0.199 }, "the slide hardly changes the belt's length: turn its direction"]],
  ),
  ends(m.rowForce, { moment: 100, outermost: 5, squares: 25, faces: 2 }, { force: 10 }, [
    [{ squares: 24.99 }, "S_yy is below y_max squared, so the outermost row is missing in it"],
  ]),
  ends(m.rowTension, { moment: 100, distance: 5, squares: 25 * (1 - 1e-9), bolts: 2 }, { tension: 20 / (1 - 1e-9) }, [
    [{ squares: 24.99 }, "S_ll is below l squared, so this row is missing in it"],
  ]),
  ends(m.sawCutAngle, { gap: 1.048, width: 20 }, {}, [
    [{ gap: 1.0482 }, "the cut is over 3 deg out of square: saw it again"],
  ]),
  ends(m.smoothIdlerRadius, { diameter: 18, thickness: 1.25, tooth: 0.75, line: 0.25 }, { back: 9.25, teeth: 10 }, [
    [{ line: 0.5 }, "tooth and pitch line are as thick as the belt"],
  ]),
  ends(m.triangleHeight, { a: 3, b: 4, c: 7 }, { longest: 7, height: 0 }, [
    [{ c: 7.001 }, "the sides do not close a triangle"],
    [{ b: 10.001 }, "the sides do not close a triangle"],
    [{ a: 11.001 }, "the sides do not close a triangle"],
  ]),
  ends(m.threeWheelForces, { preload: 40, radial: 15, axial: 5 }, { largest: 40, smallest: 0 }, [
    [{ preload: 39.99 }, "P is below 2 (F_r + F_x), so a wheel lifts off"],
  ]),
  ends(m.wheelForces, { preload: 10, radial: 15, axial: 5 }, { largest: 20, smallest: 0 }, [
    [{ preload: 9.99 }, "P is below (F_r + F_x) / 2, so a wheel lifts off"],
  ]),
  ends(m.wheelDistance, { over: 44.5, diameter: 24, bar: 20 }, { axes: 20.5, offset: 0.25 }, [
    [{ over: 44 }, "the axles would stand inside the bar: measure over the wheels again"],
  ]),
];

const FASTENERS: Ends[] = [
  ends(m.axleBending, { force: 1, arm: Math.PI / 32, diameter: 2.2269, pitch: 1 }, { core: 1, stress: 1 }, [
    [{ diameter: 1.2269 }, "the pitch leaves the bolt no core"],
  ]),
  ends(m.threadStressArea, { diameter: 2.9382, pitch: 1 }, { area: Math.PI }, [
    [{ diameter: 0.9382 }, "the pitch leaves the bolt no core"],
  ]),
  ends(m.trapezoidalThread, { diameter: 10, pitch: 5, starts: 1 }, { clearance: 0.25, root: 4.5 }, [
    [{ diameter: 5.5 }, "the pitch leaves the screw no core"],
  ]),
  ends(m.fitPlay, { holeLow: 2, holeHigh: 2, shaftLow: 1, shaftHigh: 1 }, { least: 1, most: 1 }, [
    [{ holeLow: 2.01 }, "a lower deviation lies above the upper one"],
    [{ shaftLow: 1.01 }, "a lower deviation lies above the upper one"],
  ]),
  ends(m.hollowColumnStress, { pull: 0, lever: 1, axial: 3 * Math.PI, outer: 2, inner: 1 }, { stress: 1 }, [
    [{ inner: 2 }, "r is not below R, so no wall is left"],
  ]),
  ends(m.insertBoltWindow, { grip: 10, diameter: 3, depth: 3.5 }, { shortest: 13, longest: 13 }, [
    [{ depth: 3.4 }, "the bore is too shallow for 1 d of thread and 0.5 mm below the tip"],
  ]),
  ends(
    m.slotBoltWindow,
    { grip: 7, threadStart: 0.5, diameter: 5, slotDepth: 5.5 },
    { shortest: 11.5, longest: 11.5 },
    [[{ slotDepth: 5.4 }, "the slot is too shallow for 0.8 d of thread and 1 mm below the tip"]],
  ),
  ends(m.tappedBoltWindow, { longGrip: 8, shortGrip: 8, depth: 4.5, diameter: 4 }, { shortest: 12, longest: 12 }, [
    [{ shortGrip: 8.01 }, "g_short is above g_long"],
    [{ depth: 4.4 }, "the plate is too thin for this travel and 1 d of thread"],
  ]),
  ends(m.measuredSpringRate, { force1: 5, length1: 20, force2: 10, length2: 15 }, { rate: 1 }, [
    [{ length2: 20 }, "L_2 is not below L_1"],
    [{ force2: 5 }, "F_2 is not above F_1"],
  ]),
  ends(m.springForce, { rate: 2, freeLength: 20, length: 20 }, { force: 0 }, [
    [{ length: 20.01 }, "L is above the free length L0, where the spring is loose"],
  ]),
  ends(m.springRateNeeded, { solidLength: 8.5, freeLength: 20, share: 8, range: 3 }, { rate: 3 }, [
    [{ range: 5 }, "the spring is too short for this travel, whatever its rate"],
  ]),
  ends(m.springRate, { shearModulus: 8, wire: 1, meanDiameter: 16, activeCoils: 2 }, { rate: 1 / 8192 }, [
    [{ meanDiameter: 16.01 }, "the spring index 16.01 is outside 3 to 16"],
    [{ meanDiameter: 2.99 }, "the spring index 2.99 is outside 3 to 16"],
  ]),
  ends(m.springRate, { shearModulus: 8, wire: 1, meanDiameter: 3, activeCoils: 2 }, { rate: 1 / 54 }, []),
  ends(m.springRate, { shearModulus: 8, wire: 2, meanDiameter: 10, activeCoils: 2 }, { rate: 0.008 }, []),
  ends(m.springStress, { force: Math.PI, wire: 1, meanDiameter: 3 }, { curvature: 14 / 9, stress: 112 / 3 }, [
    [{ meanDiameter: 2.99 }, "the spring index 2.99 is outside 3 to 16"],
  ]),
  ends(m.springStress, { force: Math.PI, wire: 1, meanDiameter: 16 }, { curvature: 66 / 61 }, [
    [{ meanDiameter: 16.01 }, "the spring index 16.01 is outside 3 to 16"],
  ]),
  ends(m.clashAllowance, { freeLength: 25, solidLength: 9, shortest: 24 }, { allowance: 15 }, [
    [{ shortest: 25 }, "L_min is not below the free length L0, so the spring is loose"],
  ]),
  ends(
    m.pressFitPressure,
    { interference: 0.1, ring: 1, boss: 2, modulus: 10, poisson: 1 / 3 },
    { shape: 5 / 3, pressure: 0.5, hoop: 5 / 6 },
    [[{ boss: 1 }, "the boss is not wider than the ring"]],
  ),
  ends(m.seatPressure, { force: 0.9 * Math.PI, pocket: 5.2, relief: 0.6, bore: 0 }, { pressure: 0.25 }, [
    [{ bore: 4.5 }, "nothing is left of the seat between its bore and its relief groove"],
    [{ pocket: 2, relief: 1 }, "nothing is left of the seat between its bore and its relief groove"],
  ]),
  ends(m.washerPressure, { force: 0.75 * Math.PI, washer: 2, hole: 1 }, { pressure: 1 }, [
    [{ hole: 2 }, "the hole is as wide as the washer"],
  ]),
  ends(
    m.screwThreadStress,
    { load: Math.PI, torque: Math.PI, root: 2, mean: 2.5, pitch: 1 },
    { shear: 2, axial: 1, bearing: 0.304, bending: 1.14 },
    [[{ mean: 2 }, "the root is as wide as the pitch diameter"]],
  ),
  ends(m.screwTilt, { float: 0, span: 10, pull: 1, height: 10, modulus: 1, root: 2 }, { tilt: 0 }, [
    [{ height: 10.01 }, "the belt plane lies beyond the nut"],
    [{ float: 0.525 }, "the tilt is over 3 deg, too large for this formula"],
  ]),
  ends(m.screwTilt, { float: 0.524, span: 10, pull: 0, height: 0, modulus: 1, root: 2 }, {}, []),
];

test.each([...BEAMS, ...MACHINE, ...FASTENERS])("%s ends where it says", (_, check) => check());
