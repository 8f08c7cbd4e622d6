import { describe, expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { expectPrinted, type Figure, one, sound } from "./printed.ts";

/** Figures of our own, from published formulas, computed by separate scripts before this code was written. */
const lift = (lead: number, load = 50) => ({ load, pitchDiameter: 7, lead, flank: 15, friction: 0.15 });
const tr8 = (length: number) => ({ ends: 1, modulus: 205000, yield: 300, root: 5.5, length });
const whirl = (length: number) => ({ ends: Math.PI, length, root: 5.5, modulus: 205000, density: 7.85 });
const tram = { wire: 1.2, meanDiameter: 8.8 };
const tramRate = () => one(m.springRate, "rate", { ...tram, shearModulus: 81500, activeCoils: 6 });
const tramForce = (length: number) => one(m.springForce, "force", { rate: tramRate(), freeLength: 25, length });
const music = (wire: number) => one(m.wireStrength, "tensile", { ...m.SPRING_WIRES["music wire"], wire });
const bearing608 = { dynamic: 3450, static: 1370, radial: 30, axial: 50 };
const stack = { pulley: 16, groove: 7, flange: 1, hub: 7, washers: 1, collar: 0, bearing: 7 };
const triangle = { weight: 30, xA: 0, yA: 0, xB: 300, yB: 0, xC: 150, yC: 260 };
const drive = { screwTeeth: 40, motorTeeth: 20, lead: 8, stepAngle: 1.8, microsteps: 16 };
const small = { ground: 1, totalCoils: 8 };

const FIGURES: Record<string, Figure[]> = {
  "lead screws": [
    ["lead 2 raise", () => one(m.screwTorque, "raise", lift(2)), "43.71"],
    ["lead 2 lower", () => one(m.screwTorque, "lower", lift(2)), "11.10"],
    ["lead 2 critical friction", () => one(m.screwTorque, "critical", lift(2)), "0.08785"],
    ["lead 2 efficiency", () => one(m.screwTorque, "efficiency", lift(2)), "0.3641"],
    ["lead 4 raise", () => one(m.screwTorque, "raise", lift(4)), "60.72"],
    ["lead 4 lower", () => one(m.screwTorque, "lower", lift(4)), "-4.527"],
    ["lead 4 critical friction", () => one(m.screwTorque, "critical", lift(4)), "0.1757"],
    ["lead 4 efficiency", () => one(m.screwTorque, "efficiency", lift(4)), "0.5242"],
    ["lead 8 raise", () => one(m.screwTorque, "raise", lift(8)), "96.28"],
    ["lead 8 lower", () => one(m.screwTorque, "lower", lift(8)), "-34.54"],
    ["lead 8 critical friction", () => one(m.screwTorque, "critical", lift(8)), "0.3514"],
    ["lead 8 efficiency", () => one(m.screwTorque, "efficiency", lift(8)), "0.6612"],
    ["Tr12x3 critical friction", () => one(m.screwTorque, "critical", { ...lift(3), pitchDiameter: 10.5 }), "0.0878"],
    ["100 N, lead 8, raise", () => one(m.screwTorque, "raise", lift(8, 100)), "192.6"],
    ["100 N, lead 8, lower", () => one(m.screwTorque, "lower", lift(8, 100)), "-69.1"],
    ["100 N, lead 2, raise", () => one(m.screwTorque, "raise", lift(2, 100)), "87.4"],
    ["100 N, lead 2, lower", () => one(m.screwTorque, "lower", lift(2, 100)), "22.2"],
    ["30 N, lead 8, turns the screw with", () => -one(m.screwTorque, "lower", lift(8, 30)), "20.7"],
    [
      "lift of 0.4 N·m on lead 8",
      () =>
        one(m.stallForce, "force", {
          torque: 0.4,
          ratio: 1,
          efficiency: one(m.screwTorque, "efficiency", lift(8)),
          lead: 8,
        }),
      "207.7",
    ],
  ],
  "columns and whirl": [
    ["500 mm", () => one(m.screwColumn, "critical", tr8(500)), "363.5"],
    ["800 mm", () => one(m.screwColumn, "critical", tr8(800)), "142.0"],
    ["1000 mm", () => one(m.screwColumn, "critical", tr8(1000)), "90.88"],
    ["1200 mm", () => one(m.screwColumn, "critical", tr8(1200)), "63.11"],
    ["150 mm, Johnson", () => one(m.screwColumn, "critical", tr8(150)), "3983"],
    ["150 mm, Euler", () => one(m.screwColumn, "euler", tr8(150)), "4039"],
    ["transition", () => one(m.screwColumn, "transition", tr8(150)), "159.7"],
    ["350 mm, fixed-free", () => one(m.screwColumn, "critical", { ...tr8(350), ends: 0.25 }), "185"],
    [
      "350 mm, fixed-pinned with effective length 0.7",
      () => one(m.screwColumn, "critical", { ...tr8(350), ends: 1 / 0.49 }),
      "1514",
    ],
    ["whirl 500 mm", () => one(m.screwWhirl, "speed", whirl(500)), "2649"],
    ["whirl 800 mm", () => one(m.screwWhirl, "speed", whirl(800)), "1035"],
    ["whirl 1000 mm", () => one(m.screwWhirl, "speed", whirl(1000)), "662.2"],
    ["whirl 1200 mm", () => one(m.screwWhirl, "speed", whirl(1200)), "459.9"],
    [
      "safe speed 350 mm",
      () => 0.8 * one(m.screwWhirl, "speed", { ...whirl(350), ends: 3.9266, modulus: 207000 }),
      "6789",
    ],
  ],
  springs: [
    [
      "US modulus",
      () => one(m.springRate, "rate", { shearModulus: 79300, wire: 1, meanDiameter: 7, activeCoils: 6 }),
      "4.817",
    ],
    [
      "European modulus",
      () => one(m.springRate, "rate", { shearModulus: 81500, wire: 1, meanDiameter: 7, activeCoils: 6 }),
      "4.950",
    ],
    [
      "M3 spring",
      () => one(m.springRate, "rate", { shearModulus: 81500, wire: 0.8, meanDiameter: 5.2, activeCoils: 6 }),
      "4.946",
    ],
    ["EN stress at 6 mm", () => one(m.springStress, "stress", { force: 6 * 4.9502, wire: 1, meanDiameter: 7 }), "635"],
    [
      "EN stress without correction",
      () => one(m.springStress, "stress", { force: 6 * 4.9502, wire: 1, meanDiameter: 7 }) / 1.2,
      "529",
    ],
    [
      "EN gaps",
      () => one(m.springWorkingLength, "clearance", { solidLength: 8, activeCoils: 6, meanDiameter: 7, wire: 1 }),
      "1.04",
    ],
    [
      "EN shortest",
      () => one(m.springWorkingLength, "shortest", { solidLength: 8, activeCoils: 6, meanDiameter: 7, wire: 1 }),
      "9.04",
    ],
    ["tram rate", tramRate, "5.166"],
    ["tram solid length", () => one(m.springSolidLength, "solidLength", { ...small, wire: 1.2 }), "9.6"],
    [
      "band, low",
      () => one(m.springBand, "low", { solidLength: 9.6, freeLength: 25, share: 16, rate: tramRate(), range: 3 }),
      "14.609",
    ],
    [
      "band, high",
      () => one(m.springBand, "high", { solidLength: 9.6, freeLength: 25, share: 16, rate: tramRate(), range: 3 }),
      "17.355",
    ],
    ["force at set", () => tramForce(16), "46.50"],
    ["force at the longest", () => tramForce(19), "31.00"],
    ["force at the shortest", () => tramForce(13), "62.00"],
    ["clash", () => one(m.clashAllowance, "allowance", { freeLength: 25, solidLength: 9.6, shortest: 13 }), "0.283"],
    ["stress at the shortest", () => one(m.springStress, "stress", { ...tram, force: tramForce(13) }), "956.7"],
    ["index", () => one(m.springStress, "index", { ...tram, force: 1 }), "7.33"],
    ["0.45 of the strength", () => 0.45 * music(1.2), "969.0"],
    ["slenderness", () => one(m.springStability, "slenderness", { freeLength: 25, meanDiameter: 8.8 }), "2.84"],
    [
      "M4 spring, clash",
      () => one(m.clashAllowance, "allowance", { freeLength: 20, solidLength: 8, shortest: 13.4 }),
      "0.818",
    ],
    ["M4 spring, 0.45 of the strength", () => 0.45 * music(1), "995"],
  ],
  heat: [
    [
      "growth of 457.2 mm by 80 K",
      () => one(m.thermalGrowth, "growth", { expansion: 23.4, length: 457.2, warming: 80 }),
      "0.8559",
    ],
    [
      "growth of 235 mm by 90 K",
      () => one(m.thermalGrowth, "growth", { expansion: 23.6, length: 235, warming: 90 }),
      "0.499",
    ],
    ["bow of 0.8 mm in 450", () => one(m.pinnedBow, "bow", { length: 450, growth: 0.8 }), "11.6"],
    [
      "plate mass",
      () => one(m.plateMass, "mass", { length: 457.2, width: 457.2, thickness: 6.35, density: 2.7 }),
      "3.584",
    ],
    [
      "plate energy, kJ",
      () => one(m.heatingEnergy, "energy", { mass: 3.5838, heat: 896, warming: 60, power: 300 }) / 1000,
      "192.7",
    ],
    ["plate time", () => one(m.heatingEnergy, "time", { mass: 3.5838, heat: 896, warming: 60, power: 300 }), "642"],
    [
      "smaller plate, kJ",
      () => one(m.heatingEnergy, "energy", { mass: 1.458, heat: 896, warming: 80, power: 400 }) / 1000,
      "104.5",
    ],
    [
      "smaller plate, s",
      () => one(m.heatingEnergy, "time", { mass: 1.458, heat: 896, warming: 80, power: 400 }),
      "261",
    ],
    ["bracket share", () => one(m.bracketTemperature, "share", { plate: 80, ambient: 20, gap: 18.2 }), "0.3407"],
    ["bracket temperature", () => one(m.bracketTemperature, "bracket", { plate: 80, ambient: 20, gap: 18.2 }), "45.4"],
    ["share at 10 mm", () => one(m.bracketTemperature, "share", { plate: 80, ambient: 20, gap: 10 }), "0.45"],
    ["share at 25 mm", () => one(m.bracketTemperature, "share", { plate: 80, ambient: 20, gap: 25 }), "0.25"],
    ["screw float", () => one(m.screwFloat, "play", { frame: 23.4, screw: 12, length: 600, warming: 20 }), "0.64"],
  ],
  "belt seats": [
    ["hub up", () => one(m.beltSeat, "seatUp", { ...stack, plane: 24 }), "11.5"],
    ["hub down", () => one(m.beltSeat, "seatDown", { ...stack, plane: 24 }), "4.5"],
    ["plane 32, hub up", () => one(m.beltSeat, "seatUp", { ...stack, plane: 32 }), "19.5"],
    ["plane 32, hub down", () => one(m.beltSeat, "seatDown", { ...stack, plane: 32 }), "12.5"],
    [
      "turning the pulley over",
      () => one(m.beltSeat, "offsetDown", { ...stack, plane: 0 }) - one(m.beltSeat, "offsetUp", { ...stack, plane: 0 }),
      "7.000",
    ],
    ["on a layer, tie", () => one(m.seatOnLayer, "printed", { seat: 11.5, bed: 0, first: 0.2, layer: 0.2 }), "11.4"],
    [
      "on a layer, residual",
      () => one(m.seatOnLayer, "residual", { seat: 11.5, bed: 0, first: 0.2, layer: 0.2 }),
      "-0.10",
    ],
    ["free bed", () => one(m.bedOnLayer, "bed", { seat: 4.5, lowest: -20, first: 0.2, layer: 0.2 }), "-19.9"],
    ["idler block", () => one(m.idlerBase, "base", { plane: 24, idler: 8.5, boss: 0.6, washers: 0 }), "19.15"],
  ],
  bearings: [
    ["P0", () => one(m.bearingStaticLoad, "equivalent", { radial: 30, axial: 50, rating: 1370 }), "43.0"],
    ["s0", () => one(m.bearingStaticLoad, "safety", { radial: 30, axial: 50, rating: 1370 }), "31.9"],
    ["Y", () => one(m.bearingLife, "factor", bearing608), "1.905"],
    ["P", () => one(m.bearingLife, "equivalent", bearing608), "112.05"],
    ["life, thousands of Mrev", () => one(m.bearingLife, "life", bearing608) / 1000, "29.19"],
    ["axial limit", () => one(m.bearingAxialLimit, "limit", { rating: 1370, small: 1 }), "342.5"],
    ["set screws hold", () => one(m.setScrewHold, "hold", { count: 2, each: 890, share: 0.3, load: 50 }), "534"],
    ["set screws factor", () => one(m.setScrewHold, "factor", { count: 2, each: 890, share: 0.3, load: 50 }), "10.7"],
    ["seat area", () => one(m.seatPressure, "area", { force: 50, pocket: 22.12, relief: 0.6, bore: 19.2 }), "48.8"],
    [
      "seat pressure",
      () => one(m.seatPressure, "pressure", { force: 50, pocket: 22.12, relief: 0.6, bore: 19.2 }),
      "1.03",
    ],
    [
      "pressure of a press fit",
      () =>
        one(m.pressFitPressure, "pressure", { interference: 0.1, ring: 22, boss: 30, modulus: 2000, poisson: 0.38 }),
      "2.45",
    ],
    [
      "hoop stress of a press fit",
      () => one(m.pressFitPressure, "hoop", { interference: 0.1, ring: 22, boss: 30, modulus: 2000, poisson: 0.38 }),
      "8.2",
    ],
  ],
  brackets: [
    ["foot, root moment", () => one(m.rootMoment, "moment", { axial: 50, lever: 17, pull: 30, height: 28.4 }), "1702"],
    ["foot, root stress", () => one(m.bracketRootStress, "stress", { moment: 1702, width: 32.12, height: 31 }), "0.33"],
    [
      "foot, row tension",
      () => one(m.rowTension, "tension", { moment: 2167, distance: 9.9, squares: 9.9 ** 2, bolts: 2 }),
      "218.9",
    ],
    [
      "foot, bolt tension",
      () => one(m.rowTension, "each", { moment: 2167, distance: 9.9, squares: 9.9 ** 2, bolts: 2 }),
      "109.4",
    ],
    [
      "foot under the bar, bolt tension",
      () => one(m.rowTension, "each", { moment: 3167, distance: 10, squares: 100, bolts: 2 }),
      "158.4",
    ],
    [
      "foot on top, bolt tension",
      () => one(m.rowTension, "each", { moment: 717, distance: 10, squares: 100, bolts: 2 }),
      "35.9",
    ],
    [
      "foot on a post, friction",
      () =>
        one(m.frictionUse, "use", {
          moment: 1395,
          along: 0,
          across: 0,
          friction: 0.2,
          spacing: 16,
          faces: 2,
          clamp: 600,
        }),
      "0.36",
    ],
    [
      // 165.5 N of the moment and 37.5 N of the thrust on each bolt, at right angles, against 0.2 x 833 N.
      "foot on a post that slides",
      () =>
        one(m.frictionUse, "use", {
          moment: 5296,
          along: 150,
          across: 0,
          friction: 0.2,
          spacing: 16,
          faces: 2,
          clamp: 833.3,
        }),
      "1.02",
    ],
    [
      "foot, sink",
      () => one(m.bracketSink, "sink", { force: 50, lever: 17, width: 32.12, height: 31, modulus: 2000, creep: 3 }),
      "0.006",
    ],
    [
      "tram mount, root stress",
      () => one(m.bracketRootStress, "stress", { moment: 66 * 11, width: 30, height: 8 }),
      "2.27",
    ],
    [
      "arm",
      () => one(m.cantileverDeflection, "sag", { force: 20, at: 200, length: 200, modulus: 69000, inertia: 7000 }),
      "0.110",
    ],
    [
      "even load",
      () => one(m.simpleBeamUniformLoad, "sag", { load: 0.5 * 9.81e-3, length: 500, modulus: 69000, inertia: 7000 }),
      "0.0083",
    ],
    [
      "printed arm",
      () => one(m.cantileverDeflection, "sag", { force: 30, at: 40, length: 40, modulus: 2000, inertia: 540 }),
      "0.593",
    ],
    [
      "carriage plate",
      () =>
        one(m.cantileverDeflection, "sag", {
          force: 7.625,
          at: 50,
          length: 50,
          modulus: 2000,
          inertia: (63.7 * 512) / 12,
        }),
      "0.058",
    ],
    ["leeway", () => one(m.leeway, "clearance", { spacing: 30, angle: 0.75, diameter: 5 }), "0.393"],
    ["arm slots", () => one(m.leeway, "clearance", { spacing: 40, angle: 0.75, diameter: 5 }), "0.524"],
    ["leeway angle", () => one(m.leewayAngle, "angle", { spacing: 30, clearance: 0.5, diameter: 5 }), "0.955"],
  ],
  fasteners: [
    [
      "M5 at 75 % of proof",
      () => one(m.boltTorque, "torque", { factor: 0.2, share: 0.75, proof: 580, area: 14.2, diameter: 5 }),
      "6.18",
    ],
    [
      "M4 at 75 % of proof",
      () => one(m.boltTorque, "torque", { factor: 0.2, share: 0.75, proof: 580, area: 8.78, diameter: 4 }),
      "3.06",
    ],
    [
      "M3 at 75 % of proof",
      () => one(m.boltTorque, "torque", { factor: 0.2, share: 0.75, proof: 580, area: 5.03, diameter: 3 }),
      "1.31",
    ],
    ["M3 at 0.4 N·m", () => one(m.clampForce, "force", { torque: 0.4, factor: 0.2, diameter: 3 }), "667"],
    ["plain washer", () => one(m.washerPressure, "pressure", { force: 667, washer: 7, hole: 3.2 }), "22"],
    ["large washer", () => one(m.washerPressure, "pressure", { force: 667, washer: 9, hole: 3.2 }), "12"],
    ["spacer area", () => one(m.washerPressure, "area", { force: 600, washer: 10, hole: 5.3 }), "56.48"],
    ["spacer pressure", () => one(m.washerPressure, "pressure", { force: 600, washer: 10, hole: 5.3 }), "10.6"],
    [
      "spacer torque",
      () => one(m.torqueLimit, "torque", { pressure: 12, area: 56.48, factor: 0.2, diameter: 5 }),
      "0.678",
    ],
    ["thread in plastic", () => one(m.threadShearArea, "area", { pitchDiameter: 3.545, engaged: 8 }), "44.5"],
    ["axle bolt", () => one(m.axleBending, "stress", { force: 64.83, arm: 12.5, diameter: 5, pitch: 0.8 }), "127.2"],
    ["tram bolt A", () => one(m.boltThroughLength, "needed", { grip: 39.55, nut: 4.7, pitch: 0.8 }), "45.85"],
    ["wheel bolt, fixed", () => one(m.boltThroughLength, "needed", { grip: 29, nut: 5, pitch: 0.8 }), "35.6"],
    [
      "tapped plate, short",
      () => one(m.tappedBoltWindow, "shortest", { longGrip: 25.2, shortGrip: 24.2, depth: 6.35, diameter: 4 }),
      "29.2",
    ],
    [
      "tapped plate, long",
      () => one(m.tappedBoltWindow, "longest", { longGrip: 25.2, shortGrip: 24.2, depth: 6.35, diameter: 4 }),
      "30.05",
    ],
  ],
  drives: [
    ["per full step", () => one(m.driveResolution, "perStep", drive), "0.02"],
    ["steps per mm", () => one(m.driveResolution, "stepsPerMillimetre", drive), "800"],
    ["per tooth", () => one(m.driveResolution, "perTooth", drive), "0.2"],
    ["ratio 1", () => one(m.driveResolution, "stepsPerMillimetre", { ...drive, screwTeeth: 20 }), "400"],
    ["per microstep, ratio 1", () => one(m.driveResolution, "perMicrostep", { ...drive, screwTeeth: 20 }), "0.0025"],
    ["knob", () => one(m.threadTravel, "perMark", { pitch: 0.7, marks: 12, move: 0 }), "0.058"],
    ["belt pull of 0.4 N·m", () => one(m.beltPull, "pull", { torque: 0.4, teeth: 20, pitch: 2 }), "62.8"],
  ],
  "load share": [
    ["at A", () => one(m.loadShare, "onA", { ...triangle, x: 75, y: 60 }), "19.04"],
    ["at B", () => one(m.loadShare, "onB", { ...triangle, x: 75, y: 60 }), "4.04"],
    ["at C", () => one(m.loadShare, "onC", { ...triangle, x: 75, y: 60 }), "6.92"],
    ["outside, at A", () => one(m.loadShare, "onA", { ...triangle, x: 20, y: 120 }), "21.08"],
    ["outside, at B", () => one(m.loadShare, "onB", { ...triangle, x: 20, y: 120 }), "-4.92"],
    ["outside, at C", () => one(m.loadShare, "onC", { ...triangle, x: 20, y: 120 }), "13.85"],
    ["over the centroid", () => one(m.loadShare, "onC", { ...triangle, x: 150, y: 260 / 3 }), "10"],
    ["over a corner", () => one(m.loadShare, "onB", { ...triangle, x: 300, y: 0 }), "30"],
  ],
};

for (const [topic, figures] of Object.entries(FIGURES)) {
  describe(topic, () => {
    test.each(figures)("%s", (_, computed, printed) => expectPrinted(computed(), printed));
  });
}

describe("wheel carriages, row by row", () => {
  type Carriage = readonly [layout: string, figures: readonly [string, string, string, string, string, string]];
  const pairs = (squares: number, faces = 1) => ({ outermost: 60, squares, faces });
  const rows: readonly (readonly [...Carriage, ReturnType<typeof pairs>, boolean])[] = [
    ["4 wheels", ["50.0", "7.63", "28.81", "36.02", "64.83", "7.20"], pairs(7200), false],
    ["8 wheels", ["45.0", "6.86", "25.93", "32.41", "58.35", "6.48"], pairs(8000), false],
    ["3 wheels", ["50.0", "7.63", "115.25", "144.06", "144.06", "14.41"], pairs(7200), true],
    ["6 wheels on two faces", ["25.0", "3.81", "57.63", "72.03", "72.03", "7.20"], pairs(7200, 2), true],
    ["8 wheels on two faces", ["25.0", "3.81", "14.41", "18.01", "32.41", "3.60"], pairs(7200, 2), false],
  ];

  test.each(rows)("%s, 30 N at 200 and 30.5", (_, figures, shared, three) => {
    const radial = one(m.rowForce, "force", { ...shared, moment: 30 * 200 });
    const axial = one(m.rowForce, "force", { ...shared, moment: 30 * 30.5 });
    const least = one(three ? m.threeWheelPreload : m.wheelPreload, "least", { radial, axial });
    const preload = one(three ? m.threeWheelPreload : m.wheelPreload, "preload", { radial, axial });
    const forces = three ? m.threeWheelForces : m.wheelForces;
    const largest = one(forces, "largest", { preload, radial, axial });
    const smallest = one(forces, "smallest", { preload, radial, axial });
    for (const [index, value] of [radial, axial, least, preload, largest, smallest].entries()) {
      expectPrinted(value, figures[index] ?? "");
    }
  });

  test("50 N at 200 on rows 100 apart", () => {
    const radial = one(m.rowForce, "force", { moment: 10000, outermost: 50, squares: 5000, faces: 1 });
    expectPrinted(radial, "100");
    expectPrinted(one(m.wheelPreload, "least", { radial, axial: 0 }), "50");
    expectPrinted(one(m.wheelForces, "largest", { preload: 62.5, radial, axial: 0 }), "112.5");
    expectPrinted(one(m.wheelForces, "smallest", { preload: 62.5, radial, axial: 0 }), "12.5");
    expectPrinted(one(m.threeWheelPreload, "least", { radial, axial: 0 }), "200");
  });
});

describe("torque limits on plastic, plain washers, 12 MPa", () => {
  test.each([
    [3, 7, 3.4, "0.21"],
    [4, 9, 4.5, "0.46"],
    [5, 10, 5.5, "0.66"],
    [6, 12, 6.6, "1.14"],
    [8, 16, 9, "2.64"],
  ] as const)("M%d", (diameter, washer, hole, printed) => {
    const area = one(m.washerPressure, "area", { force: 0, washer, hole });
    expectPrinted(one(m.torqueLimit, "torque", { pressure: 12, area, factor: m.TORQUE_FACTOR, diameter }), printed);
  });
});

describe("slot bolts", () => {
  const m5 = [8, 10, 12, 16, 20, 25, 30];
  const bar20 = { washer: 1, diameter: 5, threadStart: 0.5, slotDepth: 6.1, stock: m5 };
  const bar30 = { washer: 1.6, diameter: 6, threadStart: 0.6, slotDepth: 9, stock: [10, 12, 16, 20, 25] };
  const bar40 = { washer: 1.6, diameter: 8, threadStart: 1, slotDepth: 12.2, stock: [12, 16, 20, 25] };
  const bolt = (question: m.SlotBoltQuestion): m.SlotBolt => sound(m.slotBolt(question));

  test("20 series, plates 6, 8, 10 and 12.6", () => {
    expect(bolt({ ...bar20, plate: 6 })).toEqual({ length: 12, counterbore: 0, floor: 6 });
    expect(bolt({ ...bar20, plate: 8 })).toEqual({ length: 12, counterbore: 1.8, floor: 6.2 });
    expect(bolt({ ...bar20, plate: 8, layer: 0.2 })).toEqual({ length: 12, counterbore: 1.8, floor: 6.2 });
    expect(bolt({ ...bar20, plate: 10 })).toEqual({ length: 16, counterbore: 0, floor: 10 });
    expect(bolt({ ...bar20, plate: 12.6, layer: 0.2 })).toEqual({ length: 16, counterbore: 2.4, floor: 10.2 });
  });

  test("30 and 40 series, plate 6", () => {
    expect(bolt({ ...bar30, plate: 6 })).toEqual({ length: 12, counterbore: 2.3, floor: 3.7 });
    expect(bolt({ ...bar30, plate: 6, layer: 0.2 })).toEqual({ length: 12, counterbore: 2.2, floor: 3.8 });
    expect(bolt({ ...bar40, plate: 6 })).toEqual({ length: 16, counterbore: 0, floor: 6 });
  });

  test("windows", () => {
    const { washer: _, stock: __, ...slot } = bar30;
    expectPrinted(one(m.slotBoltWindow, "shortest", { ...slot, grip: 7.6 }), "13.0");
    expectPrinted(one(m.slotBoltWindow, "longest", { ...slot, grip: 7.6 }), "15.6");
  });

  test("refuses with a reason", () => {
    expect(m.slotBolt({ ...bar20, plate: 6, stock: [20] })).toHaveProperty("refused", "no bolt is 12.1 mm or shorter");
    const thin = m.slotBolt({ ...bar20, plate: 6, stock: [8] });
    expect(thin).toEqual({
      refused: "a counterbore of 3.8 mm for M5 x 8 would leave 2.2 mm of plastic, and 3 mm must stay",
    });
    expect(m.slotBolt({ ...bar20, plate: 6, slotDepth: 5 })).toHaveProperty("refused");
    expect(m.slotBolt({ ...bar20, plate: Number.NaN })).toHaveProperty("refused");
    expect(m.slotBolt({ ...bar20, plate: 8, layer: 0 })).toHaveProperty("refused");
  });
});
