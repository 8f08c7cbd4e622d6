import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import type { Request } from "../../../src/build/request.ts";
import { BARS } from "../../../src/catalogue/bars.ts";
import { SPRINGS } from "../../../src/catalogue/springs.ts";
import { hasErrors } from "../../../src/core/diagnostic.ts";
import { tramMount } from "../../../src/parts/tram-mount/index.ts";
import { MATERIALS } from "../../../src/printing/materials.ts";
import { kernel } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
const key = (table: { readonly rows: readonly { readonly key: string }[] }) =>
  fc.constantFrom(...table.rows.map((row) => row.key));

const printers = fc.record({
  layer: fc.constantFrom(0.1, 0.15, 0.2, 0.28, 0.3),
  firstLayer: fc.constantFrom(0.2, 0.25, 0.3),
  line: fc.constantFrom(0.4, 0.45, 0.5, 0.6),
  holeShrinkVertical: tenths(0, 0.4),
  firstLayerSpread: tenths(0, 0.5),
  outerGrowth: fc.constantFrom(0, 0.05, 0.1),
  materialShrink: fc.constantFrom(0, 0.6),
});

const shape = {
  mount: fc.constantFrom("on-side", "on-top", "end"),
  type: fc.constantFrom("fixed", "slot", "free"),
  joint: fc.constantFrom("thumb-wheel", "captive-nut", "insert", "tapped-plate"),
  bar: key(BARS),
  backPlate: maybe(tenths(4, 12)),
  key: fc.boolean(),
  reach: maybe(tenths(8, 40)),
  bolt: maybe(fc.constantFrom("M3", "M4", "M5", "M6")),
  lockNut: fc.boolean(),
  growth: tenths(0, 3),
  growthAngle: fc.integer({ min: -360, max: 360 }),
  halfTravel: maybe(tenths(0, 5)),
  thickness: maybe(tenths(6, 20)),
  cupDepth: maybe(tenths(2, 12)),
  wheelDiameter: maybe(tenths(20, 40)),
  plate: tenths(3, 25),
  headBelow: tenths(0.3, 1),
};

/** Anything the schema lets in, however foolish. */
const wild = fc.record({
  ...shape,
  headBelow: tenths(0, 3),
  spring: maybe(
    fc.record({
      row: key(SPRINGS),
      wire: fc.constantFrom(-1, 0, 0.2, 1, 1.2, 5),
      outside: fc.constantFrom(-3, 0, 4, 9, 14, 60),
      freeLength: fc.constantFrom(0, 12, 25, 40, 1000),
      totalCoils: fc.constantFrom(0, 2, 3.5, 8, 40),
    }),
  ),
  rate: maybe(tenths(0.1, 200)),
  ground: fc.boolean(),
  share: tenths(1, 200),
  range: maybe(tenths(0.3, 8)),
  setLength: maybe(tenths(4, 80)),
  boltLength: maybe(tenths(6, 120)),
  stock: maybe(fc.array(tenths(6, 120), { maxLength: 4 })),
  plateTemperature: tenths(-20, 200),
  ambient: tenths(0, 45),
  material: key(MATERIALS),
  sliderWasher: maybe(fc.record({ row: fc.constant("M5"), outside: fc.constantFrom(-1, 0, 3, 15, 30) })),
});

/** What a builder would ask for: the usual spring, moderate travel. */
const sensible = fc.record({
  ...shape,
  growth: tenths(0, 1.5),
  halfTravel: fc.constant(undefined),
  share: tenths(2, 20),
  range: tenths(0.3, 3),
  plate: tenths(4, 12.7),
  material: fc.constantFrom("ASA", "PC"),
  plateTemperature: tenths(20, 90),
});

function request(asked: object, printer: object): Request {
  const filled = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
  const parameters = tramMount.schema.parse(filled) as Request["parameters"];
  return {
    name: "random",
    family: tramMount,
    parameters,
    printer: printerWith(printer as never),
    calibrated: true,
    accept: [],
  };
}

describe("a tram mount of any parameters", () => {
  test("works out to finite numbers and never throws", () => {
    fc.assert(
      fc.property(wild, printers, (asked, printer) => {
        const { parameters, printer: set } = request(asked, printer);
        const { dimensions, limits, hardware, diagnostics } = tramMount.design(parameters, set);
        for (const { key: name, value } of dimensions) expect(Number.isFinite(value), name).toBe(true);
        const words = [
          ...limits,
          ...hardware.map(({ item }) => item),
          ...diagnostics.map(({ says, set }) => says + set),
        ];
        for (const line of words) expect(line).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: runs(400), seed: 20 },
    );
  });

  test("is a sound body whenever its checks pass", () => {
    let built = 0;
    fc.assert(
      fc.property(sensible, printers, (asked, printer) => {
        const one = request(asked, printer);
        if (hasErrors(tramMount.design(one.parameters, one.printer).diagnostics)) return;
        const made = make(one, kernel);
        built++;
        expect(made.diagnostics.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
        const [piece] = made.pieces;
        const sound = piece?.measures.soundness;
        const value = (key: string) => made.design.dimensions.find((one) => one.key === key)?.value ?? Number.NaN;
        const plate = 2 * value("halfWidth") * (value("halfFront") + value("reach")) * value("thickness");
        const [dx = 0, dy = 0, dz = 0] = [0, 1, 2].map(
          (axis) => (sound?.box.max[axis] ?? 0) - (sound?.box.min[axis] ?? 0),
        );
        expect(sound?.closed).toBe(true);
        expect(sound?.pieces).toBe(1);
        expect(sound?.volume).toBeGreaterThan(0.7 * plate);
        expect(sound?.volume).toBeLessThan(dx * dy * dz);
        expect(piece?.measures.walls?.[0]?.thickness ?? 0).toBeGreaterThan(2 * one.printer.line - 0.02);
      }),
      { numRuns: runs(300), seed: 21 },
    );
    expect(built).toBeGreaterThan(runs(60, 12));
  });

  test("comes out the same twice", () => {
    const [one, two] = [1, 2].map(() => make(request({ type: "free", growthAngle: 37 }, {}), kernel).pieces[0]?.mesh);
    expect(one?.positions).toEqual(two?.positions);
    expect(one?.triangles).toEqual(two?.triangles);
  });
});
