import { expect, test } from "vitest";
import { changeWords } from "../../src/build/change-words.ts";
import type { Request } from "../../src/build/request.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";

function request(name: string, parameters: object): Request {
  const family = FAMILIES.find((one) => one.name === name);
  if (family === undefined) throw new Error(`no family ${name}`);
  return {
    name,
    family,
    parameters: family.schema.parse(parameters),
    printer: UNCALIBRATED,
    calibrated: true,
    accept: [],
  };
}

const told = (family: string, was: object, is: object, units: "mm" | "in" = "mm") =>
  changeWords(request(family, was), request(family, is), Object.keys({ ...was, ...is }), units);

// An inch is 25.4 mm by definition: 9.525 mm are 3/8 in, 12.7 mm are 1/2 in.
test.each([
  ["screw-foot", { beltPlane: 9.5 }, { beltPlane: 13.5 }, "mm", "belt plane 9.5 -> 13.5 mm"],
  ["screw-foot", { beltPlane: 9.525 }, { beltPlane: 12.7 }, "in", "belt plane 0.375 -> 0.5 in"],
  ["screw-foot", { axialLoad: "50 N" }, { axialLoad: "60 N" }, "in", "axial load 50 -> 60 N"],
  ["screw-foot", { thrust: "collar" }, { thrust: "pulley" }, "mm", "collar -> pulley"],
  ["screw-foot", { bearing: "608" }, { bearing: "6001" }, "mm", "608 -> 6001"],
  ["screw-foot", { bearing: "608" }, { bearing: { row: "608", width: 6.98 } }, "mm", "608, width 7 -> 6.98"],
  ["tram-mount", { plate: 6 }, { plate: 8 }, "mm", "thickness of the plate 6 -> 8 mm"],
  ["tram-mount", {}, { halfTravel: 2 }, "mm", "half travel none -> 2 mm"],
  [
    "tram-mount",
    { allTypes: ["fixed", "slot", "free"] },
    { allTypes: ["fixed", "slot", "slot", "free"] },
    "mm",
    "changed",
  ],
] as const)("%s %j to %j in a plan in %s is said in words", (family, was, is, units, says) => {
  const words = told(family, was, is, units);
  expect(words).toContain(says);
  expect(words).not.toMatch(/\b[a-z]+[A-Z]|undefined|\[object|NaN/);
});

test("many changes are counted", () => {
  const was = { beltPlane: 9.5, axialLoad: 50, wall: 5, tipLength: 3, label: "A" };
  const is = { beltPlane: 13.5, axialLoad: 60, wall: 6, tipLength: 4, label: "B" };
  expect(told("screw-foot", was, is)).toMatch(/^belt plane 9\.5 -> 13\.5 mm; axial load 50 -> 60 N; .*; 2 more$/);
});
