import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import type { Request } from "../../../src/build/request.ts";
import { BARS } from "../../../src/catalogue/bars.ts";
import { ECCENTRICS } from "../../../src/catalogue/eccentrics.ts";
import { WHEELS } from "../../../src/catalogue/wheels.ts";
import { hasErrors } from "../../../src/core/diagnostic.ts";
import { wheelPlate } from "../../../src/parts/wheel-plate/index.ts";
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
  holeShrinkVertical: tenths(-0.1, 0.6),
  firstLayerSpread: tenths(0, 0.6),
  materialShrink: fc.constantFrom(0, 0.6),
  bedX: fc.constant(500),
  bedY: fc.constant(500),
});

const kinds = fc.array(fc.constantFrom("fixed", "eccentric"), { minLength: 1, maxLength: 4 });

/** Anything the schema may let in, however foolish. */
const wild = fc.record({
  wheels: fc.constantFrom("3", "4", "6", "8"),
  faces: maybe(fc.constantFrom(1, 2)),
  sandwich: fc.boolean(),
  rowSpacing: tenths(40, 400),
  left: fc.option(kinds, { nil: undefined, freq: 1 }),
  stagger: maybe(tenths(0, 200)),
  barWidth: tenths(15, 80),
  barDepth: tenths(15, 80),
  module: tenths(15, 80),
  wheel: fc.oneof(
    key(WHEELS),
    fc.record({
      row: key(WHEELS),
      outside: fc.constantFrom(0.5, 8, 23.9, 60, 900),
      innerLand: fc.constantFrom(1, 8.4, 40),
      boltThread: fc.constantFrom("M3", "M4", "M5", "M6", "M8"),
    }),
  ),
  overWheels: maybe(tenths(30, 200)),
  eccentric: fc.oneof(
    key(ECCENTRICS),
    fc.record({
      row: key(ECCENTRICS),
      offset: fc.constantFrom(0.01, 0.5, 0.79, 1.5, 30),
      body: fc.constantFrom(0.1, 7.1, 12, 99),
      hexFlats: fc.constantFrom(0.1, 8, 13, 400),
      height: fc.constantFrom(0.1, 1, 6, 200),
    }),
  ),
  eccentricKind: fc.constantFrom("metal", "printed"),
  spacerKind: fc.constantFrom("metal", "printed"),
  spacerLength: maybe(tenths(1, 40)),
  spacerOutside: maybe(tenths(6, 20)),
  shimmed: fc.boolean(),
  stock: maybe(fc.array(tenths(5, 200), { maxLength: 4 })),
  plate: tenths(6, 15),
  margin: tenths(4, 30),
  wheelRelief: maybe(tenths(0, 2)),
  arm: key(BARS),
  armsAt: maybe(fc.array(tenths(-200, 200), { maxLength: 3 })),
  armBoltAt: maybe(tenths(5, 120)),
  leeway: tenths(0, 3),
  load: tenths(0, 500),
  overhang: tenths(0, 600),
  offset: maybe(tenths(0, 600)),
  preload: maybe(tenths(0, 200)),
  material: key(MATERIALS),
});

/** What a builder would ask for. */
const sensible = fc.record({
  wheels: fc.constantFrom("3", "4", "6", "8"),
  sandwich: fc.constantFrom(false, false, true),
  rowSpacing: tenths(100, 220),
  barWidth: fc.constantFrom(20, 40, 60),
  barDepth: fc.constantFrom(20, 40),
  wheel: fc.constantFrom("V 23.9", "V 24.4"),
  eccentric: fc.constantFrom("6 mm", "1/4 in"),
  eccentricKind: fc.constantFrom("metal", "printed"),
  spacerKind: fc.constantFrom("metal", "printed"),
  shimmed: fc.constantFrom(true, true, true, false),
  plate: tenths(6, 15),
  margin: tenths(8, 24),
  wheelRelief: maybe(tenths(0.4, 2)),
  arm: fc.constantFrom("20x20 slot 6", "20x40 slot 6", "30x30 slot 8", "1 in", "40x40 slot 8"),
  armsAt: maybe(fc.array(fc.constantFrom(-40, -30, 0, 25, 40), { maxLength: 2 })),
  leeway: tenths(0, 3),
  load: tenths(0, 20),
  overhang: tenths(0, 300),
  material: fc.constantFrom("PETG", "ASA", "PC"),
});

/** Returns what was asked as a request, or nothing where the schema refuses it. */
function request(asked: object, printer: object): Request | undefined {
  const filled = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
  const parsed = wheelPlate.schema.safeParse(filled);
  if (!parsed.success) return undefined;
  const parameters = parsed.data as Request["parameters"];
  const settings = printerWith(printer as never);
  return { name: "random", family: wheelPlate, parameters, printer: settings, calibrated: true, accept: [] };
}

describe("a plate of any parameters", () => {
  test("works out to finite numbers and never throws", () => {
    let worked = 0;
    fc.assert(
      fc.property(wild, printers, (asked, printer) => {
        const one = request(asked, printer);
        if (one === undefined) return;
        worked++;
        const { dimensions, limits, hardware, companions, diagnostics } = wheelPlate.design(
          one.parameters,
          one.printer,
        );
        for (const { key: name, value } of dimensions) expect(Number.isFinite(value), name).toBe(true);
        const words = [
          ...limits,
          ...hardware.map(({ item }) => item),
          ...companions.map(({ parameters }) => JSON.stringify(parameters)),
          ...diagnostics.map(({ says, set }) => says + set),
        ];
        for (const line of words) expect(line).not.toMatch(/NaN|Infinity|undefined|null/);
      }),
      { numRuns: runs(800), seed: 40 },
    );
    expect(worked).toBeGreaterThan(runs(200, 40));
  });

  test("is a sound body whenever its checks pass", () => {
    let built = 0;
    fc.assert(
      fc.property(sensible, printers, (asked, printer) => {
        const one = request(asked, printer);
        if (one === undefined || hasErrors(wheelPlate.design(one.parameters, one.printer).diagnostics)) return;
        const made = make(one, kernel);
        built++;
        expect(made.diagnostics.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
        const value = (name: string) => made.design.dimensions.find(({ key }) => key === name)?.value ?? Number.NaN;
        const scale = (1 - one.printer.materialShrink / 100) ** 2;
        for (const { piece, measures } of made.pieces) {
          expect(measures.soundness?.closed, piece.name).toBe(true);
          expect(measures.soundness?.pieces).toBe(1);
          const volume = (measures.soundness?.volume ?? Number.NaN) * scale;
          const block = value("width") * value("length") * value("thickness");
          expect(volume).toBeLessThan(block);
          // Pockets take at most their depth off the whole face; the rest is holes, corners and the letter.
          const pockets = value("relief") / value("thickness");
          expect(volume).toBeGreaterThan((0.7 - pockets) * block);
          expect(measures.walls?.[0]?.thickness ?? 0).toBeGreaterThan(2 * one.printer.line - 0.02);
        }
      }),
      { numRuns: runs(300), seed: 41 },
    );
    expect(built).toBeGreaterThan(runs(60, 6));
  });

  test("comes out the same twice", () => {
    const asked = { wheels: "8", barDepth: 40, wheelRelief: 0.8 };
    const [one, two] = [1, 2].map(() => make(request(asked, {}) as Request, kernel).pieces);
    expect(one?.length).toBe(2);
    for (const at of [0, 1]) {
      expect(one?.[at]?.mesh.positions).toEqual(two?.[at]?.mesh.positions);
      expect(one?.[at]?.mesh.triangles).toEqual(two?.[at]?.mesh.triangles);
    }
  });
});
