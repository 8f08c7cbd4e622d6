import { describe, expect, test } from "vitest";
import { FAMILIES } from "../../../src/parts/index.ts";
import { wheelPlate } from "../../../src/parts/wheel-plate/index.ts";
import { printerWith } from "../../support/printer.ts";

/** All figures of this file were worked by hand for this project. */

function designed(asked: object) {
  const given = wheelPlate.schema.parse(asked) as Readonly<Record<string, unknown>>;
  return wheelPlate.design(given, printerWith());
}

const loud = (asked: object) =>
  designed(asked)
    .diagnostics.filter(({ level }) => level !== "note")
    .map(({ name, level }) => `${level} ${name}`);

function bought(asked: object) {
  const lines = designed(asked).hardware;
  return (word: RegExp) => lines.filter(({ item }) => word.test(item)).reduce((sum, { count }) => sum + count, 0);
}

const BIG = { barDepth: 40 };

describe("what each row of the worked table is warned of", () => {
  test.each([
    [{ wheels: 4 }, []],
    [{ wheels: 3, load: 15 }, []],
    [{ wheels: 3 }, ["warning wheel-overloaded", "warning axle-bolt-bends"]],
    [{ wheels: 6 }, []],
    [{ wheels: 8 }, []],
    [{ wheels: 6, ...BIG }, []],
    [{ wheels: 8, ...BIG }, []],
    [{ wheels: 6, faces: 2 }, ["error stagger-too-small"]],
  ])("%o: %o", (asked, names) => {
    expect(loud(asked)).toEqual(names);
  });
});

describe("four wheels on one plate", () => {
  const count = bought({});
  test.each([
    ["axle bolts", /^M5 x 40 /, 4],
    ["plain washers on axles and arms", /^M5 washer 10 x 1$/, 6 + 2],
    ["large washers", /^M5 large washer 15 x 1\.2$/, 2],
    ["spacers", /^spacer /, 2],
    ["eccentrics", /^eccentric /, 2],
    ["outer shims", /^shim ring 5 x 8 x 1\.0$/, 8],
    ["wheels", /^wheel /, 4],
    ["lock nuts", /lock nut$/, 4],
    ["arm bolts", /^M5 x 12 /, 2],
    ["slot nuts", /^slot nut /, 2],
  ] as const)("%s", (_, word, expected) => {
    expect(count(word)).toBe(expected);
  });

  test("the wheels take eight bearings and four inner rings 1 thick", () => {
    expect(count(/^bearing 625$/)).toBe(8);
    expect(count(/^ring 5 bore, 1 thick$/)).toBe(4);
  });
});

test("four wheels between two plates: 12 washers, 8 standoffs, 4 wheels, 4 bolts", () => {
  const count = bought({ sandwich: true, armsAt: [] });
  expect(count(/washer/)).toBe(12);
  expect(count(/^(spacer|eccentric) /)).toBe(8);
  expect(count(/^wheel /)).toBe(4);
  expect(count(/cap screw/)).toBe(4);
});

test("two faces take two hands and twice the hardware of one plate", () => {
  const design = designed({ wheels: 8, ...BIG });
  expect(design.pieces().map(({ name }) => name)).toEqual(["", "other-hand"]);
  expect(bought({ wheels: 8, ...BIG })(/^wheel /)).toBe(8);
});

describe("printed spacers and bushes", () => {
  const { companions } = designed({ spacerKind: "printed", eccentricKind: "printed" });
  const spacers = FAMILIES.find(({ name }) => name === "wheel-spacer");

  test("are parts of their own family, of the plate's measures", () => {
    expect(companions.map(({ family, count }) => ({ family, count }))).toEqual([
      { family: "wheel-spacer", count: 2 },
      { family: "wheel-spacer", count: 2 },
    ]);
    expect(companions[0]?.parameters).toMatchObject({ kind: "plain", length: 6, outside: 10 });
    expect(companions[1]?.parameters).toMatchObject({ kind: "bush", body: 9.4, hexFlats: 13, plate: 8 });
  });

  test("pass the checks of their own", () => {
    for (const { parameters } of companions) {
      const given = spacers?.schema.parse(parameters) as Readonly<Record<string, unknown>>;
      const design = spacers?.design(given, printerWith());
      expect(design?.diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
    }
  });

  test("are bought no more", () => {
    expect(bought({ spacerKind: "printed", eccentricKind: "printed" })(/^(spacer|eccentric) /)).toBe(0);
  });
});

test("a place too warm is found at its temperature, and the material's is the limit", () => {
  const found = (placeTemperature: number) =>
    designed({ placeTemperature }).diagnostics.find(({ name }) => name === "material-too-hot-in-place");
  expect(found(60)).toMatchObject({ level: "error", found: { value: 60, unit: "°C" }, limit: { value: 50 } });
  expect(found(40)).toMatchObject({ level: "warning", found: { value: 40 }, limit: { value: 35 } });
  expect(found(35)).toBeUndefined();
});
