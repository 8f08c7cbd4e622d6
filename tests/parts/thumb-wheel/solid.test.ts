import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import type { Request } from "../../../src/build/request.ts";
import { hasErrors } from "../../../src/core/diagnostic.ts";
import type { Vec3 } from "../../../src/geometry/mesh.ts";
import { thumbWheel } from "../../../src/parts/thumb-wheel/index.ts";
import { tolerableLedge } from "../../../src/verify/overhang.ts";
import { kernel, measured } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";
import { firstHit } from "../tram-mount/first-hit.ts";

const polar = (azimuth: number): Vec3 => [Math.cos((azimuth * Math.PI) / 180), Math.sin((azimuth * Math.PI) / 180), 0];
const inwards = (azimuth: number): Vec3 => polar(azimuth + 180);
const at = (radius: number, azimuth: number, z: number): Vec3 => {
  const [x, y] = polar(azimuth);
  return [radius * x, radius * y, z];
};

function request(parameters: object, printer: object = {}): Request {
  const parsed = thumbWheel.schema.parse(parameters) as Request["parameters"];
  return {
    name: "wheel",
    family: thumbWheel,
    parameters: parsed,
    printer: printerWith(printer as never),
    calibrated: true,
    accept: [],
  };
}

describe("the M5 wheel, measured on its triangles", () => {
  const { parameters, printer } = request({});
  const { mesh, box, volume } = measured(thumbWheel.design(parameters, printer).pieces()[0]?.solid as never);

  test("is 24 over the lobes and 8.2 high", () => {
    // A polygon of a round stays within 0.01 of it.
    expect(Math.abs(box.max[0] - 12)).toBeLessThan(0.0101);
    expect([box.min[2], box.max[2]]).toEqual([0, expect.closeTo(8.2, 6)]);
  });

  test("has ten scallops 1.5 deep between its lobes", () => {
    for (let lobe = 0; lobe < 10; lobe++) {
      expect(Math.abs(9.5 - firstHit(mesh, at(20, 18 + 36 * lobe, 3), inwards(18 + 36 * lobe)))).toBeLessThan(0.0101);
      expect(Math.abs(8 - firstHit(mesh, at(20, 36 * lobe, 3), inwards(36 * lobe)))).toBeLessThan(0.0101);
    }
  });

  test("has a pocket 8.05 across flats plus the growth of its walls, a corner at the index, 3.1 of floor", () => {
    expect(firstHit(mesh, [0, 0, 5], polar(30)) + firstHit(mesh, [0, 0, 5], polar(210))).toBeCloseTo(8.15, 3);
    expect(firstHit(mesh, [0, 0, 5], polar(0))).toBeCloseTo(8.15 / Math.sqrt(3), 3);
    expect(20 - firstHit(mesh, [0, 3.5, 20], [0, 0, -1])).toBeCloseTo(3.1, 4);
  });

  test("has a bore of 5.7 as drawn, wider in the layer on the bed", () => {
    expect(2 * firstHit(mesh, [0, 0, 1.5], polar(0))).toBeCloseTo(5.7, 2);
    expect(2 * firstHit(mesh, [0, 0, 0.1], polar(0))).toBeCloseTo(6.3, 2);
  });

  test("carries a mark 0.5 wide and 4 long on each lobe, 0.4 deep", () => {
    for (let lobe = 1; lobe < 10; lobe++) {
      expect(20 - firstHit(mesh, at(11.5, 36 * lobe, 20), [0, 0, -1])).toBeCloseTo(7.8, 4);
      expect(20 - firstHit(mesh, at(11.5, 36 * lobe + 2, 20), [0, 0, -1])).toBeCloseTo(8.2, 4);
    }
  });

  test("is a disc less scallops, pocket and bore", () => {
    const disc = Math.PI * 144 * 8.2;
    expect(volume).toBeLessThan(disc - 8.05 ** 2 * 0.866 * 5.1);
    expect(volume).toBeGreaterThan(0.75 * disc);
  });
});

const tenths = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((value) => value / 10);
/** Left out half of the time. */
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

const wheels = fc.record({
  bolt: fc.constantFrom("M3", "M4", "M5", "M6"),
  lockNut: fc.boolean(),
  diameter: maybe(tenths(20, 40)),
  height: maybe(tenths(7, 16)),
  excursion: tenths(0, 4),
  barDistance: tenths(16, 60),
  nut: maybe(fc.record({ row: fc.constant("M5"), acrossFlats: fc.constantFrom(-1, 0, 8, 10, 13, 30) })),
  washer: maybe(fc.record({ row: fc.constant("M6"), outside: fc.constantFrom(-1, 0, 10, 18, 30) })),
});
const printers = fc.record({
  layer: fc.constantFrom(0.1, 0.2, 0.3),
  holeShrinkVertical: tenths(0, 0.5),
  outerGrowth: fc.constantFrom(0, 0.1, 0.2),
  firstLayerSpread: tenths(0, 0.6),
});

test("a wheel of any parameters works out, and is a sound body whenever its checks pass", () => {
  let built = 0;
  fc.assert(
    fc.property(wheels, printers, (asked, printer) => {
      const filled = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
      const one = request(filled, printer);
      const { dimensions, diagnostics } = thumbWheel.design(one.parameters, one.printer);
      for (const { key, value } of dimensions) expect(Number.isFinite(value), key).toBe(true);
      if (hasErrors(diagnostics)) return;
      built++;
      const made = make(one, kernel);
      // Grid noise turns a needle of the lettering's floor over; what is smaller than a line's end is no overhang.
      const { line } = one.printer;
      const hanging = made.pieces[0]?.measures.overhangs ?? [];
      const real = hanging.filter(({ area, span }) => area >= line ** 2 && span > tolerableLedge(line));
      expect(real.filter(({ support }) => support !== "bridge")).toEqual([]);
      const loud = made.diagnostics.filter(({ level, name }) => level !== "note" && name !== "overhang-needs-support");
      expect(loud.map(({ says }) => says)).toEqual([]);
      const [piece] = made.pieces;
      expect(piece?.measures.soundness?.closed).toBe(true);
      expect(piece?.measures.soundness?.pieces).toBe(1);
      expect(piece?.measures.walls?.[0]?.thickness ?? 0).toBeGreaterThan(1.78);
    }),
    { numRuns: runs(300), seed: 22 },
  );
  expect(built).toBeGreaterThan(runs(60, 12));
});
