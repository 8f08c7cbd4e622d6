import { describe, expect, test } from "vitest";
import { armsAt } from "../../../src/parts/wheel-plate/derive/arms.ts";
import { derive } from "../../../src/parts/wheel-plate/derive.ts";
import { wheelPlate } from "../../../src/parts/wheel-plate/index.ts";
import { sidesOf } from "../../../src/parts/wheel-plate/layout.ts";
import { schema } from "../../../src/parts/wheel-plate/parameters.ts";
import { printerWith } from "../../support/printer.ts";

/** All figures of this file were worked by hand for this project. */

function worked(parameters: object) {
  return derive(schema.parse(parameters), printerWith());
}

const BIG = { barDepth: 40 };

test.each([
  // asked, rows left, rows right, arms, row to arm, F_r, F_x, P_min, P, F_eq, least, bend, stress
  [{ wheels: 4 }, [-60, 60], [-60, 60], [0], 60, 50, 7.63, 28.81, 36.02, 64.83, 7.2, 0.058, 127.2],
  [{ wheels: 3, load: 15 }, [-60, 60], [0], [-30, 30], 30, 25, 3.81, 57.63, 72.03, 72.03, 7.2, 0.002, 141.3],
  [{ wheels: 3 }, [-60, 60], [0], [-30, 30], 30, 50, 7.63, 115.25, 144.06, 144.06, 14.41, 0.004, 282.7],
  [{ wheels: 6 }, [-60, 0, 60], [-60, 0, 60], [-30, 30], 30, 50, 7.63, 28.81, 36.02, 64.83, 7.2, 0.004, 127.2],
  [{ wheels: 8 }, [-60, -20, 20, 60], [-60, -20, 20, 60], [0], 20, 45, 6.86, 25.93, 32.41, 58.35, 6.48, 0.053, 114.5],
  [{ wheels: 6, ...BIG }, [-60, 60], [0], [-30, 30], 30, 25, 3.81, 57.63, 72.03, 72.03, 7.2, 0.002, 141.3],
  [{ wheels: 8, ...BIG }, [-60, 60], [-60, 60], [0], 60, 25, 3.81, 14.41, 18.01, 32.41, 3.6, 0.029, 63.6],
] as const)("%o", (asked, left, right, arms, gap, radial, axial, least, preload, most, fewest, bend, stress) => {
  const given = schema.parse(asked);
  const numbers = worked(asked);
  expect(sidesOf(given)).toEqual({ left, right });
  expect(armsAt(given)).toEqual(arms);
  expect(numbers.rowToArm).toBeCloseTo(gap, 9);
  expect(numbers.rowToArmNeed).toBeCloseTo(18.5, 9);
  expect(numbers.axisDistance).toBeCloseTo(39.7, 9);
  expect(numbers.wheelPlane).toBeCloseTo(12.5, 9);
  expect(numbers.barGap).toBeCloseTo(2.5, 9);
  expect(numbers.offset).toBeCloseTo(30.5, 9);
  expect(numbers.clearance).toBeCloseTo(0.524, 3);
  expect(Math.abs(numbers.rowRadial - radial)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.rowAxial - axial)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.preloadLeast - least)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.preload - preload)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.largest - most)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.smallest - fewest)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(numbers.bend - bend)).toBeLessThanOrEqual(0.00051);
  expect(Math.abs(numbers.axleStress - stress)).toBeLessThanOrEqual(0.051);
});

describe("four wheels", () => {
  const numbers = worked({});
  test.each([
    ["width", 63.7, 9],
    ["length", 144, 9],
    ["thickness", 8, 9],
    ["corner", 10, 9],
    ["fixedHole", 5.3, 9],
    ["eccentricHole", 7.2, 9],
    ["armBoltX", 20, 9],
    ["armBoltLeast", 16, 9],
    ["armBoltMost", 23.85, 9],
    ["slotWidth", 5.5, 9],
    ["slotLength", 6.024, 3],
    ["recessWidth", 10.6, 9],
    ["recessLength", 11.124, 3],
    ["recessDepth", 1.8, 9],
    ["armBoltLength", 12, 9],
    ["gripFixed", 29, 9],
    ["gripEccentric", 29.2, 9],
    ["neededFixed", 35.6, 9],
    ["neededEccentric", 35.8, 9],
    ["boltLength", 40, 9],
    ["pastFixed", 6, 9],
    ["pastEccentric", 5.8, 9],
    ["axleCore", 4.018, 3],
  ] as const)("%s = %f", (key, value, digits) => {
    expect(numbers[key]).toBeCloseTo(value, digits);
  });

  test("the axles stand at +-19.85, +-60", () => {
    expect(numbers.axisDistance / 2).toBeCloseTo(19.85, 9);
  });

  test("the volume at wanted sizes is 71 023 mm3", () => {
    expect(Math.round(numbers.volume)).toBe(71023);
  });

  test("a caliper reading of 63.6 over the wheels gives the same axis distance", () => {
    expect(worked({ overWheels: 63.6 }).axisDistance).toBeCloseTo(39.7, 9);
  });
});

describe("two faces of a bar 40 deep", () => {
  const numbers = worked({ wheels: 6, ...BIG });
  test.each([
    ["faces", 2],
    ["faceDistance", 45],
    ["tipHeight", 31],
    ["stagger", 18],
    ["apart", 18],
  ] as const)("%s = %f", (key, value) => {
    expect(numbers[key]).toBeCloseTo(value, 9);
  });

  test("six wheels: the second plate's rows stand 18 higher", () => {
    expect(sidesOf(schema.parse({ wheels: 6, ...BIG })).left.map((y) => y + numbers.stagger)).toEqual([-42, 78]);
  });
});

test("on a bar 20 deep the axles of one plate reach the other", () => {
  const { faceDistance, tipHeight } = worked({ wheels: 6, faces: 2 });
  expect(faceDistance).toBeCloseTo(25, 9);
  expect(tipHeight + 1).toBeCloseTo(32, 9);
});

test("a sandwich of four wheels: washers, spacers and bolts of each axle", () => {
  const numbers = worked({ sandwich: true });
  // 12.5 + 5.5 + 1 + 6 + 1.2
  expect(numbers.sandwichGap).toBeCloseTo(26.2, 9);
  expect(numbers.farGap).toBeCloseTo(3.7, 9);
  // 29 + 6 + 1.2 + 8, and 29.2 - 1 + 6 + 1.2 + 8 + 1.2
  expect(numbers.gripFixed).toBeCloseTo(44.2, 9);
  expect(numbers.gripEccentric).toBeCloseTo(44.6, 9);
  expect(numbers.neededEccentric).toBeCloseTo(51.2, 9);
  expect(numbers.boltLength).toBe(55);
});

test("a printed eccentric is 9.4 wide in a hole of 9.5", () => {
  const { eccentricBody, eccentricHole } = worked({ eccentricKind: "printed" });
  expect(eccentricBody).toBeCloseTo(9.4, 9);
  expect(eccentricHole).toBeCloseTo(9.5, 9);
});

test.each([50, 75])("an overload of %d N tells one limit in its words and its figures", (load) => {
  const given = schema.parse({ load }) as Readonly<Record<string, unknown>>;
  const found = wheelPlate.design(given, printerWith()).diagnostics.find(({ name }) => name === "wheel-overloaded");
  expect(found?.says).toContain(`${found?.found?.value.toFixed(1)} N`);
  expect(found?.says).toMatch(new RegExp(`over (the )?${found?.limit?.value} N`));
});
