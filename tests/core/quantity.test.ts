import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { INSIDE, type Kind, readQuantity, shownUnitsOf, unitsOf } from "../../src/core/quantity.ts";

describe("quantities with units", () => {
  test.each([
    ["18 in", "length", 457.2],
    ['3/4"', "length", 19.05],
    ["1 1/2 in", "length", 38.1],
    ["-1/4 in", "length", -6.35],
    ["46 cm", "length", 460],
    ["460 mm", "length", 460],
    ["460", "length", 460],
    ["2 N/mm", "rate", 2],
    ["12 lbf/in", "rate", 2.1015],
    ["0.5 deg", "angle", 0.5],
    ["7 lb", "mass", 3.17515],
    ["212 °F", "temperature", 100],
    ["200 W", "power", 200],
    ["24 V", "voltage", 24],
    ["230V", "voltage", 230],
    ["0.6 N m", "torque", 0.6],
    ["1e2 mm", "length", 100],
    ['1-1/4"', "length", 31.75],
    ["1-1/4 in", "length", 31.75],
    ["-1-1/4 in", "length", -31.75],
    ['1 1/4"', "length", 31.75],
    ["15″", "length", 381],
    [`1' 3"`, "length", 381],
    [`1' 3 1/2"`, "length", 393.7],
    ["1 ft 3 in", "length", 381],
    ["-1 ft 6 in", "length", -457.2],
    ["2'", "length", 609.6],
    ["6 in lbf", "torque", 0.6779],
    ["6  lbf in", "torque", 0.6779],
    ["600 N mm", "torque", 0.6],
    ["1 ft lbf", "torque", 1.3558],
    ["300 K", "temperature", 26.85],
    ["40 N cm", "torque", 0.4],
    ["40 N·cm", "torque", 0.4],
    ["40Ncm", "torque", 0.4],
    ["450 mNm", "torque", 0.45],
  ] as const)("%s is a %s of %d", (text, kind, value) => {
    const reading = readQuantity(text, kind);
    expect(reading).toHaveProperty("value");
    expect("value" in reading ? reading.value : Number.NaN).toBeCloseTo(value, 4);
  });

  test.each([
    ["2 N/mm", "length", /measures a rate/],
    ["24 W", "voltage", /measures a power/],
    ["1,5 mm", "length", /comma/],
    ["twelve", "length", /not a number/],
    ["12 mn", "length", /not a unit/],
    ["1e400", "length", /too large/],
    ["", "length", /not a number/],
    ["1/0 in", "length", /not a unit|not a number|cannot be read/],
    ["1-1/4 mm", "length", /cannot be read/],
    ["1-1/4", "length", /cannot be read/],
    [`1' 14"`, "length", /cannot be read/],
    ["1 - 1/4 in", "length", /cannot be read/],
    ["3 constructor", "length", /not a unit/],
    ["300 K", "length", /measures a temperature/],
  ] as const)("%s is refused as a %s, with a cure", (text, kind, reason) => {
    const reading = readQuantity(text, kind);
    expect("wrong" in reading && reading.wrong).toMatch(reason);
    expect("set" in reading && reading.set.length).toBeGreaterThan(0);
  });

  // NIST SP 811, appendix B.8: pound-force inch.
  test("the inch-pound is exact", () => {
    expect(readQuantity("1000 lbf in", "torque")).toEqual({ value: 112.984829028 });
  });

  // NIST SP 811, appendix B.8, to its seven digits: ounce-force inch, kilogram-force metre, pound-force foot.
  test.each([
    ["ozf·in", 7.061552e-3],
    ["ozf in", 7.061552e-3],
    ["oz in", 7.061552e-3],
    ["oz·in", 7.061552e-3],
    ["oz-in", 7.061552e-3],
    ["in oz", 7.061552e-3],
    ["kgf·m", 9.80665],
    ["kgf cm", 9.80665e-2],
    ["kg cm", 9.80665e-2],
    ["kg·cm", 9.80665e-2],
    ["kg.cm", 9.80665e-2],
    ["lbf·ft", 1.355818],
    ["lb ft", 1.355818],
  ] as const)("a torque of a sheet in %s is %d N·m", (unit, size) => {
    const reading = readQuantity(`1000 ${unit}`, "torque");
    expect("value" in reading ? reading.value / 1000 / size : Number.NaN).toBeCloseTo(1, 6);
  });

  test("a mass stays a mass where no arm stands behind it", () => {
    expect(readQuantity("3 kg", "torque")).toMatchObject({ wrong: "kg measures a mass, and this is a torque" });
    expect(readQuantity("3 kg cm", "mass")).toMatchObject({ wrong: "kg cm measures a torque, and this is a mass" });
  });

  test.each([
    ["6 KN", "force", "6 kN"],
    ["1 1/2 Inch", "length", "1 1/2 inch"],
    ["3 MM", "length", "3 mm"],
    ["6 in lbfs", "torque", "6 in·lbf"],
  ] as const)("%s: capitals and plurals are mended", (text, kind, set) => {
    expect(readQuantity(text, kind)).toMatchObject({ set });
  });

  test.each([
    ["24 mn", "length"],
    ["3 nm", "length"],
    ["5 kPa", "pressure"],
    ["7 lbf/ft", "rate"],
    ["1-1/4 m", "length"],
    ["30 x", "temperature"],
    ["6 kg ft", "torque"],
    ["10 kg", "force"],
  ] as const)("%s as a %s: the cure lists the units of that quantity and no number as typed", (text, kind) => {
    const reading = readQuantity(text, kind);
    const set = "set" in reading ? reading.set : "";
    expect(set.startsWith(`a ${kind} in ${shownUnitsOf(kind).join(", ")}`)).toBe(true);
  });

  test("any text gives a finite value or a reason, never an exception", () => {
    const kinds = Object.keys(INSIDE) as Kind[];
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...kinds), (text, kind) => {
        const reading = readQuantity(text, kind);
        if ("value" in reading) expect(Number.isFinite(reading.value)).toBe(true);
        else expect(reading.wrong).not.toBe("");
      }),
      { numRuns: 500 },
    );
  });

  test("every spelling reads back to the same value through its own unit", () => {
    for (const kind of Object.keys(INSIDE) as Kind[]) {
      expect(unitsOf(kind)[0]).toBe(INSIDE[kind]);
      for (const unit of unitsOf(kind)) expect(readQuantity(`3 ${unit}`, kind)).toHaveProperty("value");
    }
  });
});
