import { describe, expect, test } from "vitest";
import { BELT_TENSIONS } from "../../src/catalogue/belt-tensions.ts";
import { FITS } from "../../src/catalogue/fits.ts";
import { SCREWS } from "../../src/catalogue/screws.ts";
import { spell } from "../../src/core/bibliography.ts";
import { row } from "../../src/core/table.ts";
import { circumscribed, ring, segments } from "../../src/geometry/segments.ts";
import * as m from "../../src/mechanics/index.ts";
import { teardropFlat } from "../../src/parts/features/teardrop.ts";
import { expectPrinted, type Figure, INCH, one, POUND, POUND_INCH } from "./printed.ts";

const square = { load: 6400, pitchDiameter: 30, lead: 8, flank: 0, friction: 0.08 };
const collar = { load: 6400, friction: 0.08, diameter: 40 };
const doubleStart = { load: 1000 * POUND, pitchDiameter: 0.9 * INCH, lead: 0.4 * INCH, flank: 14.5, friction: 0.12 };
const problem = { load: 5000, pitchDiameter: 22.5, lead: 5, flank: 0, friction: 0.09 };
const acme = { load: 12500 * POUND, pitchDiameter: 1.3429 * INCH, lead: 0.25 * INCH, flank: 14.5, friction: 0.15 };

/** Efficiency with the collar: the collar's torque counts against it, as the books print it. */
function withCollar(screw: typeof square, friction: number, diameter: number): number {
  const raise = one(m.screwTorque, "raise", screw);
  const rubbing = one(m.collarTorque, "torque", { load: screw.load, friction, diameter });
  return (screw.load * screw.lead) / (2 * Math.PI * (raise + rubbing));
}

const turning = () => one(m.screwTorque, "raise", square) + one(m.collarTorque, "torque", collar);
const body = (result: "shear" | "axial" | "bearing" | "bending") =>
  one(m.screwThreadStress, result, { load: 6400, torque: turning(), root: 28, mean: 30, pitch: 4 });

const PRINTED: Record<string, Figure[]> = {
  [`${spell("shigley")}: Example 8-1, from memory`]: [
    ["efficiency with the collar", () => withCollar(square, 0.08, 40), "0.311"],
    ["shear in the body, MPa", () => body("shear"), "6.07"],
    ["compression of the body, MPa", () => body("axial"), "10.39"],
    ["pressure on the first thread, MPa", () => body("bearing"), "12.9"],
    ["bending at the first root, MPa", () => body("bending"), "41.5"],
  ],
  [`${spell("juvinall")}: power-screw sample problem, from memory`]: [
    ["efficiency with the collar", () => withCollar(doubleStart, 0.09, 1.5 * INCH), "0.337"],
  ],
  [`${spell("shigley")}: chapter 8 problem, solved on a page`]: [
    ["efficiency with the collar", () => withCollar(problem, 0.06, 45), "0.251"],
  ],
  [`${spell("mott")}: Example Problem 17-1`]: [
    ["lead angle, deg", () => one(m.screwTorque, "leadAngle", acme), "3.39"],
    ["torque to lower, lbf in", () => one(m.screwTorque, "lower", acme) / POUND_INCH, "796"],
  ],
  "screw makers' efficiency tables, which leave out the flank angle": [
    ["Tr10x2 at 0.1, as printed", () => one(m.screwTorque, "efficiency", { ...small, flank: 0 }), "0.41"],
    ["Tr10x2 at 0.1, by the formula", () => one(m.screwTorque, "efficiency", { ...small, flank: 15 }), "0.40"],
  ],
  [`${spell("shigley")}: 8-8, on an engineering reference page`]: [
    ["M10, 25 kN, MPa", () => one(m.boltStress, "stress", { force: 25000, area: 58, proof: 600 }), "431"],
    ["share of 34.8 kN, %", () => 100 * one(m.boltStress, "share", { force: 25000, area: 58, proof: 600 }), "71.8"],
  ],
  [`${spell("openstax")}: heat capacity example`]: [
    ["pan and water together, kJ", () => (pan() + water()) / 1000, "89.8"],
    ["share of the pan, %", () => (100 * pan()) / (pan() + water()), "30.1"],
  ],
  [`${spell("belt-makers")}: pulley and drive design pages`]: [
    ["outside of 20 teeth of 2 mm", () => outside(20, 2, 0.254), "12.224"],
    ["outside of 60 teeth of 2 mm", () => outside(60, 2, 0.254), "37.689"],
    ["outside of a T5 with 20 teeth", () => outside(20, 5, 0.415), "31.00"],
    ["exact length, 20 and 60 teeth 100 apart", () => drive("length"), "281.623"],
    ["length by the handbook's approximation", () => drive("approximate"), "281.621"],
    ["centre distance for 280", () => one(m.twoPulleyCentres, "centres", { ...pair, length: 280 }), "99.1816"],
    ["the same, approximate", () => one(m.twoPulleyCentres, "approximate", { ...pair, length: 280 }), "99.183"],
    [
      "teeth in mesh, estimated",
      () => one(m.meshEstimate, "mesh", { teeth: 20, large: 38.197, small: 12.732, centres: 100 }),
      "9.15",
    ],
    [
      "stall of 0.4 N·m on 20 teeth over the tension of a belt 6 wide",
      () =>
        one(m.beltPull, "pull", { torque: 0.4, teeth: 20, pitch: 2 }) /
        row(BELT_TENSIONS, "2 mm G x 6").values.allowable,
      "2.4",
    ],
  ],
  [`${spell("en-13906-1")}: own numbers`]: [
    ["Wahl factor at index 7", () => one(m.wahlFactor, "factor", { index: 7 }), "1.213"],
    [
      "force at 6 mm",
      () => one(m.springForce, "force", { rate: 81500 / (8 * 343 * 6), freeLength: 20, length: 14 }),
      "29.7",
    ],
    [
      "usable travel",
      () => 20 - one(m.springWorkingLength, "shortest", { solidLength: 8, activeCoils: 6, meanDiameter: 7, wire: 1 }),
      "10.96",
    ],
  ],
  [spell("iso-286")]: [
    ["8 H7/g6, least play, um", () => 1000 * playOf("6 to 10", "g6", "least"), "5"],
    ["8 H7/g6, most play, um", () => 1000 * playOf("6 to 10", "g6", "most"), "29"],
    ["22 H7/p6, least interference, um", () => -1000 * playOf("18 to 30", "p6", "most"), "1"],
    ["22 H7/p6, most interference, um", () => -1000 * playOf("18 to 30", "p6", "least"), "35"],
  ],
  [`${spell("machinerys-handbook")}: thread in plastic, M4, 8 mm`]: [
    [
      "with the exact pitch diameter",
      () => one(m.threadShearArea, "area", { pitchDiameter: exactM4, engaged: 8 }),
      "44.55",
    ],
  ],
  "own arithmetic on printed holes": [
    ["corners of a pocket of 22.30", () => hole(22.3, 0), "22.3191"],
    ["the same, 0.2 of shrink", () => hole(22.3, 0.2), "22.5192"],
    ["corners of a pocket of 22.12, 0.2 of shrink", () => hole(22.12, 0.2), "22.3391"],
    ["lost by 32 corners on the circle of 22.30", () => 22.3 - 2 * (ring(11.15, 32)[0]?.[0] ?? 0), "0.1074"],
    ["apex over a hole of radius 5", () => roof("apex"), "7.071"],
    ["its flat, were it cut at the circle", () => roof("flat") + 2 * 0.3, "4.14"],
    ["flat of a hole of 5.75", () => one(m.teardropRoof, "flat", { diameter: 5.75, layer: 0.2 }), "1.782"],
  ],
  "own arithmetic on slots of bars": [
    ["40 series, shortest", () => one(m.slotBoltWindow, "shortest", slot40), "15.0"],
    ["40 series, longest", () => one(m.slotBoltWindow, "longest", slot40), "18.8"],
    ["20 series, plate 8, shortest", () => one(m.slotBoltWindow, "shortest", { ...slot20, grip: 9 }), "13.5"],
    ["20 series, plate 8, longest", () => one(m.slotBoltWindow, "longest", { ...slot20, grip: 9 }), "14.1"],
    ["20 series, plate 10, shortest", () => one(m.slotBoltWindow, "shortest", { ...slot20, grip: 11 }), "15.5"],
    ["20 series, plate 10, longest", () => one(m.slotBoltWindow, "longest", { ...slot20, grip: 11 }), "16.1"],
  ],
};

const small = { load: 1, pitchDiameter: 9, lead: 2, friction: 0.1 };
const slot20 = { threadStart: 0.5, diameter: 5, slotDepth: 6.1 };
const slot40 = { threadStart: 1, diameter: 8, slotDepth: 12.2, grip: 7.6 };
const exactM4 = 4 - (3 / 8) * Math.sqrt(3) * 0.7;
const radius = (teeth: number) => one(m.pitchRadius, "radius", { teeth, pitch: 2 });
const pair = { large: radius(60), small: radius(20) };
const pan = () => one(m.heatingEnergy, "energy", { mass: 0.5, heat: 900, warming: 60, power: 1 });
const water = () => one(m.heatingEnergy, "energy", { mass: 0.25, heat: 4186, warming: 60, power: 1 });
const outside = (teeth: number, pitch: number, line: number) => one(m.pulleyOutside, "outside", { teeth, pitch, line });
const drive = (result: "length" | "approximate") => one(m.twoPulleyLoop, result, { ...pair, centres: 100 });
const hole = (wanted: number, shrink: number) => one(m.printedHole, "corners", { wanted, shrink });
const roof = (result: "apex" | "flat") => one(m.teardropRoof, result, { diameter: 10, layer: 0.2 });

function playOf(sizes: string, shaft: "g6" | "p6", result: "least" | "most"): number {
  const [bore, pin] = [row(FITS, `H7 ${sizes}`).values, row(FITS, `${shaft} ${sizes}`).values];
  return one(m.fitPlay, result, {
    holeLow: bore.lower,
    holeHigh: bore.upper,
    shaftLow: pin.lower,
    shaftHigh: pin.upper,
  });
}

for (const [source, figures] of Object.entries(PRINTED)) {
  describe(source, () => {
    test.each(figures)("%s", (_, computed, printed) => expectPrinted(computed(), printed));
  });
}

/** Lead angle in degrees and the friction that locks, of a handbook's table of trapezoidal threads; partly computed. */
const ANGLES: readonly (readonly [string, string, string])[] = [
  ["Tr8x1.5", "3.768", "0.0636"],
  ["Tr8x2", "5.197", "0.0878"],
  ["Tr9x2", "4.55", "0.0769"],
  ["Tr10x1.5", "2.955", "0.0499"],
  ["Tr10x2", "4.046", "0.0683"],
  ["Tr10x3", "6.41", "0.1085"],
  ["Tr11x2", "3.643", "0.0615"],
  ["Tr12x2", "3.312", "0.0559"],
  ["Tr12x3", "5.197", "0.0878"],
  ["Tr14x2", "2.804", "0.0473"],
  ["Tr14x3", "4.369", "0.0738"],
  ["Tr14x4", "6.057", "0.1025"],
  ["Tr16x2", "2.43", "0.041"],
  ["Tr16x3", "3.768", "0.0636"],
  ["Tr16x4", "5.197", "0.0878"],
  ["Tr18x4", "4.55", "0.0769"],
  ["Tr20x4", "4.046", "0.0683"],
  ["Tr8x4(P2)", "10.309", "0.1757"],
  ["Tr8x8(P2)", "19.991", "0.3514"],
  ["Tr8x10(P2)", "24.453", "0.4392"],
  ["Tr10x4(P2)", "8.052", "0.1367"],
  ["Tr10x8(P2)", "15.798", "0.2733"],
  ["Tr12x8(P2)", "13.034", "0.2236"],
  ["Tr12x6(P3)", "10.309", "0.1757"],
  ["Tr16x8(P4)", "10.309", "0.1757"],
];

describe("lead angles and locking friction of trapezoidal screws, by the diameters of ISO 2904", () => {
  test.each(ANGLES)("%s: %s deg, %s", (key, angle, friction) => {
    const { pitchDiameter, lead } = row(SCREWS, key).values;
    const screw = { load: 1, pitchDiameter, lead, flank: 15, friction: 0.1 };
    expectPrinted(one(m.screwTorque, "leadAngle", screw), angle);
    expectPrinted(one(m.screwTorque, "critical", screw), friction);
  });

  test("cover every screw of the catalogue", () => {
    expect(ANGLES.map(([key]) => key).sort()).toEqual(SCREWS.rows.map(({ key }) => key).sort());
  });
});

describe("what is drawn is what the calculation says", () => {
  test.each([1, 3.4, 5.5, 8, 22.3, 42.1, 80])("a hole of %d", (wanted) => {
    const { sides, corners } = { sides: one(m.printedHole, "sides", { wanted, shrink: 0 }), corners: hole(wanted, 0) };
    expect(sides).toBe(segments(wanted / 2));
    expect(corners).toBeCloseTo(2 * circumscribed(wanted / 2, sides), 12);
  });

  test.each([0.6, 1.4, 3.4, 5.75, 10])("the roof of a hole of %d", (diameter) => {
    for (const layer of [0.1, 0.2, 0.4]) {
      expect(one(m.teardropRoof, "flat", { diameter, layer })).toBeCloseTo(teardropFlat(diameter, layer), 12);
    }
  });
});
