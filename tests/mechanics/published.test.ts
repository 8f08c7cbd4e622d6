import { describe, expect, test } from "vitest";
import { type Citation, spell } from "../../src/core/bibliography.ts";
import { isRefusal } from "../../src/core/calculation.ts";
import * as m from "../../src/mechanics/index.ts";
import { expectPrinted, type Figure, INCH, KSI, one, POUND, POUND_INCH } from "./printed.ts";

const acme = { load: 12500 * POUND, pitchDiameter: 1.3429 * INCH, lead: 0.25 * INCH, flank: 14.5, friction: 0.15 };
const square = { load: 6400, pitchDiameter: 30, lead: 8, flank: 0, friction: 0.08 };
const doubleStart = { load: 1000 * POUND, pitchDiameter: 0.9 * INCH, lead: 0.4 * INCH, flank: 14.5, friction: 0.12 };
const problem = { load: 5000, pitchDiameter: 22.5, lead: 5, flank: 0, friction: 0.09 };
const jack = { load: 10000 * POUND, pitchDiameter: 2 * INCH, lead: 0.5 * INCH, flank: 0, friction: 0.2 };
const collar = { load: 6400, friction: 0.08, diameter: 40 };
const secondCollar = { load: 1000 * POUND, friction: 0.09, diameter: 1.5 * INCH };
const thirdCollar = { load: 5000, friction: 0.06, diameter: 45 };

const SCREWS: Partial<Record<Citation, readonly Figure[]>> = {
  "shigley: Example 8-1, from memory": [
    ["thread torque to raise, N·m", () => one(m.screwTorque, "raise", square) / 1000, "15.94"],
    ["thread torque to lower, N·m", () => one(m.screwTorque, "lower", square) / 1000, "-0.466"],
    ["collar torque, N·m", () => one(m.collarTorque, "torque", collar) / 1000, "10.24"],
    [
      "torque to raise, N·m",
      () => (one(m.screwTorque, "raise", square) + one(m.collarTorque, "torque", collar)) / 1000,
      "26.18",
    ],
    [
      "torque to lower, N·m",
      () => (one(m.screwTorque, "lower", square) + one(m.collarTorque, "torque", collar)) / 1000,
      "9.77",
    ],
    ["friction that locks", () => one(m.screwTorque, "critical", square), "0.0849"],
  ],
  "mott: Example Problem 17-1": [
    ["torque to lower, lbf in", () => one(m.screwTorque, "lower", acme) / POUND_INCH, "796"],
    [
      "torque to raise, lbf in, exact value of the book's equation",
      () => one(m.screwTorque, "raise", acme) / POUND_INCH,
      "1814",
    ],
    ["efficiency, exact", () => 100 * one(m.screwTorque, "efficiency", acme), "27.4"],
  ],
  "juvinall: power-screw sample problem, from memory": [
    ["thread torque to raise, lbf in", () => one(m.screwTorque, "raise", doubleStart) / POUND_INCH, "121.6"],
    ["collar torque, lbf in", () => one(m.collarTorque, "torque", secondCollar) / POUND_INCH, "67.5"],
    ["thread torque to lower, lbf in", () => one(m.screwTorque, "lower", doubleStart) / POUND_INCH, "-7.7"],
    [
      "torque to raise, lbf in",
      () => (one(m.screwTorque, "raise", doubleStart) + one(m.collarTorque, "torque", secondCollar)) / POUND_INCH,
      "189",
    ],
    [
      "torque to lower, lbf in",
      () => (one(m.screwTorque, "lower", doubleStart) + one(m.collarTorque, "torque", secondCollar)) / POUND_INCH,
      "59.8",
    ],
  ],
  "shigley: chapter 8 problem, solved on a page": [
    [
      "torque to raise, N·m",
      () => (one(m.screwTorque, "raise", problem) + one(m.collarTorque, "torque", thirdCollar)) / 1000,
      "15.85",
    ],
    [
      "torque to lower, N·m",
      () => (one(m.screwTorque, "lower", problem) + one(m.collarTorque, "torque", thirdCollar)) / 1000,
      "7.83",
    ],
  ],
  "iso-2904": [
    ["Tr8x1.5 d2", () => one(m.trapezoidalThread, "pitchDiameter", { diameter: 8, pitch: 1.5, starts: 1 }), "7.250"],
    ["Tr8x1.5 d3", () => one(m.trapezoidalThread, "root", { diameter: 8, pitch: 1.5, starts: 1 }), "6.200"],
    ["Tr10x2 d2", () => one(m.trapezoidalThread, "pitchDiameter", { diameter: 10, pitch: 2, starts: 1 }), "9.000"],
    ["Tr10x2 d3", () => one(m.trapezoidalThread, "root", { diameter: 10, pitch: 2, starts: 1 }), "7.500"],
    ["Tr12x3 d2", () => one(m.trapezoidalThread, "pitchDiameter", { diameter: 12, pitch: 3, starts: 1 }), "10.500"],
    ["Tr12x3 d3", () => one(m.trapezoidalThread, "root", { diameter: 12, pitch: 3, starts: 1 }), "8.500"],
    ["Tr14x3 d2", () => one(m.trapezoidalThread, "pitchDiameter", { diameter: 14, pitch: 3, starts: 1 }), "12.500"],
    ["Tr14x3 d3", () => one(m.trapezoidalThread, "root", { diameter: 14, pitch: 3, starts: 1 }), "10.500"],
  ],
};

const music = { wire: 0.037 * INCH, meanDiameter: 0.4 * INCH };
const usSpring = { ...music, shearModulus: 11850 * KSI, activeCoils: 10.5 };
const yieldLoad = 6.46 * POUND;
const beam = { force: 50 * POUND, length: 30 * INCH, modulus: 10200 * KSI, inertia: 0.2542 * INCH ** 4 };

const STRENGTH: Partial<Record<Citation, readonly Figure[]>> = {
  "shigley: Example 10-1, from memory": [
    ["rate, lbf/in", () => (one(m.springRate, "rate", usSpring) / POUND) * INCH, "4.13"],
    ["curvature factor", () => one(m.springStress, "curvature", { ...music, force: 1 }), "1.124"],
    [
      "tensile strength, kpsi",
      () => one(m.wireStrength, "tensile", { ...m.SPRING_WIRES["music wire"], wire: music.wire }) / KSI,
      "324",
    ],
    [
      "solid length, in",
      () => one(m.springSolidLength, "solidLength", { totalCoils: 12.5, wire: 0.037, ground: 0 }),
      "0.4995",
    ],
    [
      "critical free length, in",
      () => one(m.springStability, "critical", { freeLength: 2, meanDiameter: 0.4 }),
      "2.10",
    ],
    ["deflection at the yield load, in", () => yieldLoad / one(m.springRate, "rate", usSpring) / INCH, "1.56"],
  ],
  "shigley: 4-12, on strength-of-materials problems": [
    [
      "pinned rod 1/2 in, 5 ft, lbf",
      () =>
        one(m.eulerLoad, "load", {
          ends: 1,
          modulus: 30000 * KSI,
          inertia: (Math.PI / 64) * (0.5 * INCH) ** 4,
          length: 60 * INCH,
        }) / POUND,
      "252",
    ],
    [
      "tube strut 44.5 x 2.5, 2.7 m, kN",
      () =>
        one(m.eulerLoad, "load", {
          ends: 1,
          modulus: 200000,
          inertia: (Math.PI / 64) * (44.5 ** 4 - 39.5 ** 4),
          length: 2700,
        }) / 1000,
      "19.76",
    ],
    [
      "round column 0.5 m, 20 m, MN",
      () =>
        one(m.eulerLoad, "load", { ends: 1, modulus: 200000, inertia: (Math.PI / 64) * 500 ** 4, length: 20000 }) / 1e6,
      "15.14",
    ],
  ],
  "profile-makers: beam page of a trade catalogue": [
    ["1.5 in profile, 30 in, 50 lbf, in", () => one(m.simpleBeamDeflection, "sag", beam) / INCH, "0.011"],
    ["the same, recomputed, in", () => one(m.simpleBeamDeflection, "sag", beam) / INCH, "0.01085"],
    [
      "40x40 heavy profile, mm",
      () => one(m.simpleBeamDeflection, "sag", { force: 222.4, length: 762, modulus: 70326.5, inertia: 138800 }),
      "0.21",
    ],
  ],
  "shigley: 8-8, on engineering reference pages": [
    ["M10, 50 N·m, kN", () => one(m.clampForce, "force", { torque: 50, factor: 0.2, diameter: 10 }) / 1000, "25"],
    [
      "M12 8.8 at 70 %, kN",
      () => one(m.boltTorque, "force", { factor: 0.2, share: 0.7, proof: 580, area: 84.3, diameter: 12 }) / 1000,
      "34.2",
    ],
    [
      "M12 8.8 at 70 %, N·m",
      () => one(m.boltTorque, "torque", { factor: 0.2, share: 0.7, proof: 580, area: 84.3, diameter: 12 }),
      "82",
    ],
    ["M16 stress area", () => one(m.threadStressArea, "area", { diameter: 16, pitch: 2 }), "156.67"],
    [
      "M16 8.8 at 75 %, kN",
      () => one(m.boltTorque, "force", { factor: 0.2, share: 0.75, proof: 580, area: 156.67, diameter: 16 }) / 1000,
      "68",
    ],
    [
      "M16 8.8 at 75 %, N·m",
      () => one(m.boltTorque, "torque", { factor: 0.2, share: 0.75, proof: 580, area: 156.67, diameter: 16 }),
      "218.08",
    ],
  ],
  "shigley: Example 8-3, from memory": [
    [
      "torque for 25 kip in a 3/4 in bolt, lbf in",
      () =>
        (1000 * 25000 * POUND) /
        one(m.clampForce, "force", { torque: POUND_INCH / 1000, factor: 0.2, diameter: 0.75 * INCH }) /
        1000,
      "3750",
    ],
  ],
};

const life = (dynamic: number, radial: number) =>
  one(m.bearingLife, "life", { dynamic, static: dynamic / 2, radial, axial: 0 });

const OTHERS: Partial<Record<Citation, readonly Figure[]>> = {
  "iso-281: examination question and reference page": [
    ["C 16 kN, P 2 kN, Mrev", () => life(16000, 2000), "512"],
    ["C 30 kN, P 3 kN, Mrev", () => life(30000, 3000), "1000"],
    ["the same at 1500 rpm, h", () => (life(30000, 3000) * 1e6) / (60 * 1500), "11111"],
    ["C 30 kN, P 4 kN, Mrev", () => life(30000, 4000), "422"],
    ["the same at 1500 rpm, h", () => (life(30000, 4000) * 1e6) / (60 * 1500), "4688"],
  ],
  "bearing-makers: rule of a product page, own numbers": [
    [
      "P0 of 100 N and 200 N",
      () => one(m.bearingStaticLoad, "equivalent", { radial: 100, axial: 200, rating: 1370 }),
      "160",
    ],
    ["axial limit of a 608 with C0 1379", () => one(m.bearingAxialLimit, "limit", { rating: 1379, small: 1 }), "345"],
  ],
  "belt-makers: pulley and tensioning pages": [
    ["pitch diameter, 20 teeth of 2 mm", () => 2 * one(m.pitchRadius, "radius", { teeth: 20, pitch: 2 }), "12.732"],
    ["pitch diameter, 60 teeth of 2 mm", () => 2 * one(m.pitchRadius, "radius", { teeth: 60, pitch: 2 }), "38.197"],
    ["pitch diameter, T5 with 20 teeth", () => 2 * one(m.pitchRadius, "radius", { teeth: 20, pitch: 5 }), "31.83"],
    ["deflection for setting the tension, span 100", () => one(m.spanDeflection, "deflection", { span: 100 }), "1.56"],
  ],
  "openstax: expansion and heat capacity examples, from memory": [
    ["bridge span, m", () => one(m.thermalGrowth, "growth", { expansion: 12, length: 1275, warming: 55 }), "0.84"],
    [
      "heat in the pan, kJ",
      () => one(m.heatingEnergy, "energy", { mass: 0.5, heat: 900, warming: 60, power: 1 }) / 1000,
      "27.0",
    ],
    [
      "heat in the water, kJ",
      () => one(m.heatingEnergy, "energy", { mass: 0.25, heat: 4186, warming: 60, power: 1 }) / 1000,
      "62.8",
    ],
  ],
  "openstax: expansion, on college notes": [
    ["copper pipe, mm", () => one(m.thermalGrowth, "growth", { expansion: 17, length: 2000, warming: 72 }), "2.45"],
  ],
};

for (const group of [SCREWS, STRENGTH, OTHERS]) {
  for (const [source, figures] of Object.entries(group) as [Citation, readonly Figure[]][]) {
    describe(spell(source), () => {
      test.each(figures)("%s", (_, computed, printed) => expectPrinted(computed(), printed));
    });
  }
}

describe("figures that were rounded on the way", () => {
  test("the Acme example prints 1809 lbf in and 27.5 %, its own equation gives 0.3 % more", () => {
    expect(one(m.screwTorque, "raise", acme) / POUND_INCH / 1809).toBeCloseTo(1, 2);
    expect(one(m.screwTorque, "efficiency", acme) / 0.275).toBeCloseTo(1, 2);
  });

  test("the spring example prints 6.46 lbf for its yield load, from a stress rounded to 0.45 of 324 kpsi", () => {
    const perNewton = one(m.springStress, "stress", { ...music, force: 1 });
    expect((0.45 * 324 * KSI) / perNewton / yieldLoad).toBeCloseTo(1, 2);
  });

  test("a statics textbook prints 2840 lbf in for a screw jack", () => {
    expect(Math.abs(one(m.screwTorque, "raise", jack) / POUND_INCH - 2840)).toBeLessThan(2840 * 0.002);
  });

  test("a ball-screw maker's paper prints 18 Hz and 8 Hz for a shaft 1 in thick and 100 in long", () => {
    const shaft = { length: 2540, root: 25.4, modulus: 207000, density: 7.85 };
    expectPrinted(one(m.screwWhirl, "frequency", { ...shaft, ends: m.SHAFT_ENDS["fixed-fixed"].whirl }), "18");
    expectPrinted(one(m.screwWhirl, "frequency", { ...shaft, ends: m.SHAFT_ENDS.pinned.whirl }), "8");
  });

  test("screw makers' catalogue factors are four fifths of the whirling speed", () => {
    const factors = { "fixed-free": 3.4, pinned: 9.7, "fixed-pinned": 15.1, "fixed-fixed": 21.9 } as const;
    for (const [ends, factor] of Object.entries(factors)) {
      const { whirl } = m.SHAFT_ENDS[ends as keyof typeof factors];
      const shaft = { ends: whirl, length: 2540, root: 25.4, modulus: 207000, density: 7.85 };
      const catalogue = factor * (25.4 / 2540 ** 2) * 1e7;
      expect(Math.abs(catalogue / (0.8 * one(m.screwWhirl, "speed", shaft)) - 1)).toBeLessThan(0.02);
    }
  });
});

test("the table of set-screw holds, in its own units", () => {
  const published: readonly (readonly [number, number, number])[] = [
    [3, 200, 10],
    [4, 385, 20],
    [5, 540, 36],
  ];
  for (const [diameter, hold, torque] of published) {
    const row = m.cupPointHold.compute({ diameter });
    if (isRefusal(row)) throw new Error(row.refused);
    expectPrinted(hold * POUND, String(row.hold));
    expectPrinted((row.torque * 1000) / POUND_INCH, String(torque));
  }
});
