import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { make } from "../../../src/build/make.ts";
import type { Request } from "../../../src/build/request.ts";
import { hasErrors } from "../../../src/core/diagnostic.ts";
import type { Mesh, Vec3 } from "../../../src/geometry/mesh.ts";
import type { Solid } from "../../../src/geometry/solid.ts";
import { wheelSpacer } from "../../../src/parts/wheel-spacer/index.ts";
import { MATERIALS } from "../../../src/printing/materials.ts";
import { kernel, measured, meshVolume } from "../../support/kernel.ts";
import { printerWith } from "../../support/printer.ts";
import { runs } from "../../support/thorough.ts";
import { firstHit } from "../tram-mount/first-hit.ts";

function request(asked: object, settings: object = {}): Request {
  const filled = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
  const parameters = wheelSpacer.schema.parse(filled) as Request["parameters"];
  const printer = printerWith(settings as never);
  return { name: "spacer", family: wheelSpacer, parameters, printer, calibrated: true, accept: [] };
}

function built(asked: object) {
  const { parameters, printer } = request(asked);
  return measured(wheelSpacer.design(parameters, printer).pieces()[0]?.solid as Solid);
}

const width = (mesh: Mesh, from: Vec3) => firstHit(mesh, from, [1, 0, 0]) + firstHit(mesh, from, [-1, 0, 0]);

describe("a plain ring, measured on its triangles", () => {
  const { mesh, box, pieces } = built({});

  test("has the volume that was worked by hand", () => {
    expect(meshVolume(mesh)).toBeCloseTo(327.25, 2);
    expect(pieces).toBe(1);
  });

  test("is 6 high, 10 over its corners, with a bore of 5.5 on the flats", () => {
    expect(box.max[2] - box.min[2]).toBeCloseTo(6, 6);
    expect(width(mesh, [0, 0, 3])).toBeCloseTo(5.5, 4);
    expect(20 - firstHit(mesh, [20, 0, 3], [-1, 0, 0])).toBeCloseTo(5, 1);
    const corners = Array.from({ length: mesh.positions.length / 3 }, (_, index) =>
      Math.hypot(mesh.positions[3 * index] ?? 0, mesh.positions[3 * index + 1] ?? 0),
    );
    expect(Math.max(...corners)).toBeCloseTo(5, 5);
  });
});

test("a flange of 14, 1.2 thick, stands on the bed", () => {
  const { mesh } = built({ kind: "flanged" });
  expect(20 - firstHit(mesh, [20, 0, 0.6], [-1, 0, 0])).toBeCloseTo(7, 1);
  expect(20 - firstHit(mesh, [20, 0, 1.3], [-1, 0, 0])).toBeCloseTo(5, 1);
  expect(20 - firstHit(mesh, [6, 0, 20], [0, 0, -1])).toBeCloseTo(1.2, 6);
});

describe("a bush, measured on its triangles", () => {
  const { mesh, box } = built({ kind: "bush" });

  test("is a hexagon of 13, 6 high, and a body of 9.4 up to 13.5", () => {
    expect(box.max[1] - box.min[1]).toBeCloseTo(13, 5);
    expect(box.max[2] - box.min[2]).toBeCloseTo(13.5, 6);
    expect(20 - firstHit(mesh, [6, 0, 20], [0, 0, -1])).toBeCloseTo(6, 6);
    expect(20 - firstHit(mesh, [0, 20, 10], [0, -1, 0])).toBeCloseTo(4.7, 1);
  });

  test("has its bore 0.79 off towards +x, so that 1.16 of the modelled thin side is left", () => {
    const right = firstHit(mesh, [0.79, 0, 10], [1, 0, 0]);
    const left = firstHit(mesh, [0.79, 0, 10], [-1, 0, 0]);
    expect(right).toBeCloseTo(2.75, 4);
    expect(left).toBeCloseTo(2.75, 4);
    // 4.7 - 0.79 - 2.75, less what the body's polygon lacks on its flats.
    expect(20 - firstHit(mesh, [20, 0, 10], [-1, 0, 0]) - 0.79 - right).toBeCloseTo(1.16, 1);
  });

  test("is marked on the corner of its thick side", () => {
    const corner = 6.5 / Math.cos(Math.PI / 6);
    expect(20 - firstHit(mesh, [20, 0, 3], [-1, 0, 0])).toBeCloseTo(corner, 4);
    expect(20 - firstHit(mesh, [-20, 0, 3], [1, 0, 0])).toBeCloseTo(corner - 1.1, 2);
  });
});

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

const spacers = fc.record({
  kind: fc.constantFrom("plain", "flanged", "bush"),
  bolt: fc.constantFrom("M3", "M4", "M5", "M6", "M8"),
  against: fc.constantFrom("shim", "bearing"),
  innerLand: tenths(4, 20),
  outside: maybe(tenths(4, 20)),
  length: tenths(2, 40),
  torque: tenths(0.1, 2),
  material: fc.constantFrom(...MATERIALS.rows.map(({ key }) => key)),
  plate: tenths(6, 15),
  body: maybe(tenths(5.5, 16)),
  offset: tenths(0.3, 1.5),
  hexHeight: tenths(3, 12),
});

const printers = fc.record({
  layer: fc.constantFrom(0.1, 0.15, 0.2, 0.3),
  firstLayer: fc.constantFrom(0.2, 0.3),
  holeShrinkVertical: tenths(-0.1, 0.6),
  materialShrink: fc.constantFrom(0, 0.6, 2),
});

test("any spacer that passes its checks is a sound body of the volume it says", () => {
  let sound = 0;
  fc.assert(
    fc.property(spacers, printers, (asked, settings) => {
      const one = request(asked, settings);
      const design = wheelSpacer.design(one.parameters, one.printer);
      for (const { key, value } of design.dimensions) expect(Number.isFinite(value), key).toBe(true);
      if (hasErrors(design.diagnostics)) return;
      sound++;
      const made = make(one, kernel);
      expect(made.diagnostics.filter(({ level }) => level === "error").map(({ says }) => says)).toEqual([]);
      const [piece] = made.pieces;
      expect(piece?.measures.soundness?.pieces).toBe(1);
      expect(piece?.measures.walls?.[0]?.thickness ?? 0).toBeGreaterThan(0.85);
      const said = design.dimensions.find(({ key }) => key === "volume")?.value ?? Number.NaN;
      const scale = (1 - one.printer.materialShrink / 100) ** 2;
      const mark = asked.kind === "bush" ? (Math.PI / 3) * 1.3 ** 2 * 12.3 : 0;
      const volume = (piece?.measures.soundness?.volume ?? Number.NaN) * scale;
      expect(volume).toBeLessThan(said + 0.02 + 1e-4 * said);
      expect(volume).toBeGreaterThan(said - mark - 0.02 - 1e-4 * said);
    }),
    { numRuns: runs(300), seed: 30 },
  );
  expect(sound).toBeGreaterThan(runs(60, 6));
});

test("comes out the same twice", () => {
  const [one, two] = [1, 2].map(() => make(request({ kind: "bush" }), kernel).pieces[0]?.mesh);
  expect(one?.positions).toEqual(two?.positions);
  expect(one?.triangles).toEqual(two?.triangles);
});
