import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import type { Request } from "../../../src/build/request.ts";
import { BARS } from "../../../src/catalogue/bars.ts";
import { BEARINGS } from "../../../src/catalogue/bearings.ts";
import { BELTS } from "../../../src/catalogue/belts.ts";
import { COLLARS } from "../../../src/catalogue/collars.ts";
import { PULLEYS } from "../../../src/catalogue/pulleys.ts";
import { SCREWS } from "../../../src/catalogue/screws.ts";
import { hasErrors } from "../../../src/core/diagnostic.ts";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { MATERIALS } from "../../../src/printing/materials.ts";
import { kernel } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
const key = (table: { readonly rows: readonly { readonly key: string }[] }) =>
  fc.constantFrom(...table.rows.map((row) => row.key));
const azimuth = fc.integer({ min: 0, max: 360 });
const span = fc.record({ azimuth, side: fc.constantFrom("right", "left") });

const printers = fc.record({
  layer: fc.constantFrom(0.1, 0.15, 0.2, 0.28, 0.3),
  firstLayer: fc.constantFrom(0.2, 0.25, 0.3),
  line: fc.constantFrom(0.4, 0.45, 0.5, 0.6),
  holeShrinkVertical: tenths(0, 0.4),
  holeShrinkHorizontal: tenths(0, 0.4),
  firstLayerSpread: tenths(0, 0.5),
  outerGrowth: fc.constantFrom(0, 0.05, 0.1),
  materialShrink: fc.constantFrom(0, 0.6),
});

const shape = {
  mount: fc.constantFrom("on-side", "on-top", "in-corner", "on-post", "under"),
  bar: key(BARS),
  hub: fc.constantFrom("up", "down", "auto"),
  pocketFit: fc.constantFrom("drop-in", "push"),
  keyAzimuth: azimuth,
  cornerAngle: tenths(85, 95),
  cornerMeasured: fc.boolean(),
  locate: fc.constantFrom("none", "key"),
  label: fc.constantFrom("FOOT", "", "A1"),
};

/** Anything the schema lets in, however foolish. */
const wild = fc.record({
  ...shape,
  style: fc.constantFrom("open", "walled", "bridged"),
  thrust: fc.constantFrom("pulley", "collar", "shoulder", "tip", "hung"),
  pocketFit: fc.constantFrom("drop-in", "push", "press"),
  bearing: fc.oneof(
    key(BEARINGS),
    fc.record({
      row: key(BEARINGS),
      outside: fc.constantFrom(0.1, 8, 22, 90),
      width: fc.constantFrom(0.5, 7, 60),
      innerLand: fc.constantFrom(0.1, 12, 200),
      outerLand: fc.constantFrom(0.1, 19, 200),
      cornerRadius: fc.constantFrom(0.01, 5),
    }),
  ),
  pulley: fc.oneof(
    key(PULLEYS),
    fc.record({
      row: key(PULLEYS),
      height: fc.constantFrom(0.5, 16, 90),
      toothWidth: fc.constantFrom(0.1, 7, 40),
      teeth: fc.constantFrom(1, 7.5, 40, 900),
      hubDiameter: fc.constantFrom(0.5, 16, 80),
      setScrew: fc.constantFrom("M3", "M8", "none"),
      setScrewCount: fc.constantFrom(0, 1, 2),
    }),
  ),
  screw: key(SCREWS),
  endDiameter: maybe(tenths(2, 40)),
  belt: key(BELTS),
  beltWidth: tenths(3, 30),
  washers: maybe(fc.array(fc.record({ row: fc.constant("M8"), outside: tenths(9, 40) }), { maxLength: 8 })),
  collar: maybe(key(COLLARS)),
  beltPlane: tenths(-200, 400),
  beltSpans: fc.array(span, { minLength: 1, maxLength: 4 }),
  postAzimuths: maybe(fc.tuple(azimuth, azimuth)),
  axisOffset: maybe(tenths(8, 80)),
  axisOffsetB: maybe(tenths(8, 80)),
  offset: tenths(0, 60),
  lowestZ: tenths(-400, 400),
  wall: tenths(2, 12),
  floor: tenths(4, 20),
  plate: maybe(tenths(4, 15)),
  shoulderBore: maybe(tenths(3, 120)),
  tipLength: tenths(0, 30),
  tipRelief: tenths(1, 10),
  cap: fc.boolean(),
  axialLoad: fc.constantFrom(0, 50, 2000),
  lightestLoad: maybe(fc.constantFrom(0, 40, 2000)),
  steadyLoad: maybe(fc.constantFrom(0, 40, 2000)),
  otherSink: maybe(fc.constantFrom(0, 0.05, 20)),
  beltPull: fc.constantFrom(0, 30, 2000),
  crashForce: fc.constantFrom(0, 500, 5000),
  bearingToNut: maybe(tenths(20, 2000)),
  nutFloat: tenths(0, 3),
  stageLowest: maybe(tenths(-200, 1000)),
  placeTemperature: tenths(-40, 150),
  boltLengths: maybe(fc.array(tenths(4, 100), { minLength: 1, maxLength: 4 })),
  material: key(MATERIALS),
  framePosts: fc.array(fc.record({ x: tenths(-100, 100), y: tenths(-100, 100), width: tenths(5, 100) }), {
    maxLength: 2,
  }),
});

/** Bearings, screws that fit them, and the bore that goes with both; one screw is turned down to its bearing. */
const PAIRS = [
  ["608", "Tr8x2", 8],
  ["688", "Tr8x2", 8],
  ["6900", "Tr10x2", 10],
  ["6000", "Tr10x2", 10],
  ["6001", "Tr12x3", 12],
  ["608", "Tr10x2", 8],
] as const;

/** What a builder would ask for. */
const sensible = fc.record({
  ...shape,
  style: fc.constantFrom("open", "open", "walled", "bridged"),
  thrust: fc.constantFrom("pulley", "collar", "tip", "hung"),
  pair: fc.constantFrom(...PAIRS),
  pulley: fc.constantFrom("20 teeth 2 mm", "36 teeth 2 mm", "40 teeth 2 mm", "60 teeth 2 mm"),
  beltPlane: tenths(10, 60),
  beltSpans: fc.array(span, { minLength: 1, maxLength: 2 }),
  offset: fc.constantFrom(0, 0, 5, 25),
  wall: tenths(4, 8),
  floor: tenths(4, 8),
  keyAzimuth: fc.constantFrom(45, 80, 90, 300),
  cap: fc.constantFrom(false, false, true),
  lightestLoad: fc.constant(50),
});

interface Asked {
  readonly pair?: (typeof PAIRS)[number];
  readonly pulley?: unknown;
  readonly mount?: string;
}

function request({ pair, ...asked }: Asked, printer: object): Request {
  const fitting = pair && {
    ...{ bearing: pair[0], screw: pair[1], pulley: { row: asked.pulley, bore: pair[2] } },
    ...(pair[1].startsWith(`Tr${pair[2]}x`) ? {} : { endDiameter: pair[2] }),
  };
  const whole = { ...asked, ...fitting };
  const filled = Object.fromEntries(Object.entries(whole).filter(([, value]) => value !== undefined));
  const parameters = screwFoot.schema.parse(filled) as Request["parameters"];
  return {
    name: "random",
    family: screwFoot,
    parameters,
    printer: printerWith(printer as never),
    calibrated: true,
    accept: [],
  };
}

/** Solid of revolution and plate bounds: more than a tube of the pocket's wall, less than the whole box. */
function bounds(made: ReturnType<typeof make>): { least: number; most: number } {
  const value = (name: string) => made.design.dimensions.find((one) => one.key === name)?.value ?? Number.NaN;
  const tube = Math.PI * (value("housing") ** 2 - (value("pocketModelled") / 2 + 0.6) ** 2) * value("pocketDepth");
  return { least: 0.8 * tube, most: value("sizeX") * value("sizeY") * value("sizeZ") };
}

describe("a screw foot of any parameters", () => {
  test("works out to finite numbers and never throws", () => {
    fc.assert(
      fc.property(wild, printers, (asked, printer) => {
        const { parameters, printer: set } = request(asked, printer);
        const { dimensions, limits, hardware, diagnostics } = screwFoot.design(parameters, set);
        for (const { key: name, value } of dimensions) expect(Number.isFinite(value), name).toBe(true);
        const words = [
          ...limits,
          ...hardware.map(({ item }) => item),
          ...diagnostics.map(({ says, set: cure }) => says + cure),
        ];
        for (const line of words) expect(line).not.toMatch(/NaN|Infinity|undefined|\d\.\d{5,}/);
      }),
      { numRuns: runs(600), seed: 30 },
    );
  });

  test("is sound, and clear of all hardware, whenever its checks pass", () => {
    let built = 0;
    const seen = new Set<string>();
    fc.assert(
      fc.property(sensible, printers, (asked, printer) => {
        const one = request(asked, printer);
        if (hasErrors(screwFoot.design(one.parameters, one.printer).diagnostics)) return;
        const made = make(one, kernel);
        built++;
        seen.add(`${asked.mount} ${asked.style}`);
        expect(made.diagnostics.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
        for (const { measures } of made.pieces) {
          expect(measures.soundness?.closed).toBe(true);
          expect(measures.soundness?.pieces).toBe(1);
          expect(measures.walls?.[0]?.thickness ?? 0).toBeGreaterThan(2 * one.printer.line - 0.02);
        }
        const [foot] = made.pieces;
        const { least, most } = bounds(made);
        expect(foot?.measures.soundness?.volume).toBeGreaterThan(least);
        expect(foot?.measures.soundness?.volume).toBeLessThan(1.02 * most);
      }),
      { numRuns: runs(300), seed: 31 },
    );
    expect(built).toBeGreaterThan(runs(40, 4));
    expect(seen.size).toBeGreaterThan(runs(9, 6));
  });

  test("comes out the same twice", () => {
    const asked = { mount: "in-corner", style: "bridged", cornerAngle: 92 };
    const [one, two] = [1, 2].map(() => make(request(asked, {}), kernel).pieces[0]?.mesh);
    expect(one?.positions).toEqual(two?.positions);
    expect(one?.triangles).toEqual(two?.triangles);
  });
});
