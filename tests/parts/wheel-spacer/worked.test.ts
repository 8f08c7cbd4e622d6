import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/parts/check.ts";
import { checks } from "../../../src/parts/wheel-spacer/checks.ts";
import { derive } from "../../../src/parts/wheel-spacer/derive.ts";
import { dimensions } from "../../../src/parts/wheel-spacer/dimensions.ts";
import { schema } from "../../../src/parts/wheel-spacer/parameters.ts";
import { printerWith } from "../../support/printer.ts";

/** All figures of this file were worked by hand for this project. */

function worked(parameters: object) {
  return derive(schema.parse(parameters), printerWith());
}

function found(parameters: object) {
  const [given, printer] = [schema.parse(parameters), printerWith()];
  return runChecks(checks, { given, derived: derive(given, printer), printer })
    .filter(({ level }) => level !== "note")
    .map(({ name, level }) => `${level} ${name}`);
}

describe("a ring 10 wide and 6 long on an M5 bolt", () => {
  const numbers = worked({});
  test.each([
    ["bore", 5.3, 9],
    ["boreModelled", 5.5, 9],
    ["outside", 10, 9],
    ["length", 6, 9],
    ["wall", 2.35, 9],
    ["roundSides", 52, 9],
    ["boreSides", 40, 9],
    ["volume", 327.25, 2],
    ["area", 56.48, 2],
    ["clamp", 600, 9],
    ["pressure", 10.6, 1],
    ["torqueAllowed", 0.678, 3],
  ] as const)("%s = %f", (key, value, digits) => {
    expect(numbers[key]).toBeCloseTo(value, digits);
  });

  test("bears 677.7 N for years", () => {
    expect(12 * numbers.area).toBeCloseTo(677.7, 1);
  });

  test("an M5 at 1.0 N·m is 1000 N, 17.7 MPa on it", () => {
    const harder = worked({ torque: 1 });
    expect(harder.clamp).toBeCloseTo(1000, 9);
    expect(harder.pressure).toBeCloseTo(17.7, 1);
    expect(found({ torque: 1 })).toEqual(["error spacer-crushed-by-torque"]);
  });
});

describe("a ring 8.4 wide against the bearing itself", () => {
  const numbers = worked({ against: "bearing" });
  test.each([
    ["outside", 8.4, 9],
    ["roundSides", 48, 9],
    ["volume", 188.71, 2],
    ["area", 33.36, 2],
    ["torqueAllowed", 0.4, 3],
  ] as const)("%s = %f", (key, value, digits) => {
    expect(numbers[key]).toBeCloseTo(value, digits);
  });

  test("bears 400.3 N: 0.6 N·m crushes it, 0.4 does not; 1.0 N·m is 30 MPa", () => {
    expect(12 * numbers.area).toBeCloseTo(400.3, 1);
    expect(found({ against: "bearing" })).toEqual(["error spacer-crushed-by-torque"]);
    expect(found({ against: "bearing", torque: 0.4 })).toEqual([]);
    expect(worked({ against: "bearing", torque: 1 }).pressure).toBeCloseTo(30, 1);
  });
});

describe("a printed eccentric bush", () => {
  const numbers = worked({ kind: "bush" });
  test.each([
    ["body", 9.4],
    ["plateHole", 9.5],
    ["hexFlats", 13],
    ["standoff", 6],
    ["bodyLength", 7.5],
    ["bushWall", 1.26],
  ] as const)("%s = %f", (key, value) => {
    expect(numbers[key]).toBeCloseTo(value, 9);
  });

  test("the body of a metal one cannot be printed: 0.11 of wall", () => {
    expect(worked({ kind: "bush", body: 7.1 }).bushWall).toBeCloseTo(0.11, 9);
    expect(found({ kind: "bush", body: 7.1 })).toEqual(["error eccentric-bush-wall-too-thin"]);
  });

  test("its hexagon reaches over the shield, so that it wants a shim", () => {
    expect(found({ kind: "bush", against: "bearing", torque: 0.3 })).toEqual(["error spacer-touches-shield"]);
  });

  test("a hexagon that would follow its body into the plate is refused", () => {
    expect(schema.safeParse({ kind: "bush", hexFlats: 12 }).success).toBe(false);
    expect(schema.safeParse({ kind: "bush", hexFlats: 13 }).success).toBe(true);
  });
});

test.each([
  ["plain", 2.7, true],
  ["plain", 2.6, false],
] as const)("a %s ring %f wider than its bolt: sound is %s", (kind, wider, sound) => {
  const thin = found({ kind, outside: 5 + wider, torque: 0.1 });
  expect(thin.includes("error spacer-wall-too-thin")).toBe(!sound);
});

test("a ring without plastic has no pressure and says so; no number of it is a stand-in", () => {
  expect(worked({ outside: 5.2 }).pressure).toBe(0);
  expect(found({ outside: 5.2 })).toContain("error spacer-crushed-by-torque");
  expect(dimensions.pressure.meaning).not.toMatch(/\d{3}/);
});
